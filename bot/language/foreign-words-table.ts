/**
 * The small words of other languages that growers write in, as they are looked up (accents folded). None is English and
 * none is a word for a crop or a cover, so two of them together tell the language. Common knowledge.
 */
export const FOREIGN_SMALL_WORDS: ReadonlySet<string> = new Set(
  // French
  (
    'le la les des du un une et est sous avec dans sur que quel quelle quels quelles ma mes peut combien faut je il elle nous vous ils pour mon ' +
    // German
    'der das und ist wie mein meine meinem meinen unter mit bei grad nicht wird ich ein eine einer einem kann soll wann welche fur oder auf dem uber ' +
    // Spanish and Portuguese
    'el los las una con por para bajo mi mis cuanto cuanta cuantos puede grados esta y meu minha os um uma sob com graus nao pode quantos ' +
    // Italian
    'lo gli di della del dei che sotto quanto gradi mia mio puo sono alla ' +
    // Dutch
    'het een mijn onder graden kan hoe koud voor zijn niet bij wat ' +
    // Swedish, Danish, Norwegian
    'och vad blir hva hvad mitt grader hur klarar ikke og jeg det att inte ' +
    // Polish and Czech
    'czy moj moja pod jest stopni przy jak ile nie muj moje ' +
    // Finnish
    'miten kuinka astetta alla minun'
  ).split(' '),
);

/** Small words of English that none of those languages has. */
export const ENGLISH_SMALL_WORDS: ReadonlySet<string> = new Set(
  (
    'the my our your is are it its to of at and with do does can could should would how what whats when which if this that these ' +
    'you im ive they them going gonna be been will get without'
  ).split(' '),
);
