/**
 * How people say that a cover is not there. Each pattern is held against the words beside a cover (see `Surroundings`):
 * `before` patterns end where the cover begins, `after` patterns begin where it ends. Bounded repeats only. Common usage.
 */

/** What becomes of plants: a denial of it says nothing of the cover. */
const FATE =
  'survive|survives|live|lives|make|makes|die|dies|hold|holds|take|takes|last|handle|handles|grow|grows|think|know|care|believe|like|see|worry|mind|freeze|expect|cope|manage|enough|ok|okay|fine|safe|thrive|lose|hurt|kill|help|helps|mean|matter|work|works|sure|hardened|warm|bad|great|good|much|remember|harm|save|stand|protect|keep|cut';

const NOT =
  'not|dont|doesnt|didnt|havent|hasnt|hadnt|isnt|arent|wasnt|werent|aint|wont|cant|cannot|couldnt|wouldnt|never';

const PERSON =
  'neighbou?rs?|friends?|brother|sister|mother|mom|mum|dad|father|uncle|aunt|cousin|buddy|mate|boss|gardener next door|next door|guy|lady|people|everyone|everybody|someone|somebody|others|folks|they|he|she|club|school|grandma|grandpa|parents|in laws';

const PUT =
  'have|has|had|having|own|owning|put|puts|putting|get|gets|got|getting|use|used|using|lay|laid|add|added|throw|threw|throwing|thrown|find|found|afford|pull|pulled|close|closed|shut|place|placed|set|install|build|built|make it to|bring|brought|buy|bought|need|want|want to|cover (it|them) with|cover|covered|in|under|inside|within|beneath|with|even';

/** "isn't open", "no holes", "did not forget": said of what would be wrong, and so it is on. */
export const NOT_OFF =
  /(^| )(not|no|isnt|arent|wasnt|hasnt|havent|didnt|did not|wont|never|nobody|nothing|not a|without)( \w+){0,3} (budged|moved|forget|forgot|forgotten|take|taken|open|off|gap|gaps|hole|holes|wrong|leave|leaves|left open|slipped|blown|fail|without|miss|missed|removed|come off)( |$)|(^| )(not|isnt|arent) (just|only)$|never without/;

/** "put it straight back", "it's on": whatever went before. */
export const BACK_ON =
  /(^| )(?<!(not|didnt|never|havent|to|cant|couldnt|without) )(put|got|pulled|threw|tucked|pegged|tied|laid) (it |them )?(straight |right )?back( |$)|(^| )back on( |$)|(^| )(its|it is|theyre|is|are) (now |safely |firmly |pegged |tied )+(on|down|over)( |$)|(^| )(its|theyre) on( [.,;!]|$)|(^| )(found it|and it did|and they did|there is this year|its on|out on the CROP|nothing wrong with|doors closed|door shut|and staying|is out on|got (a|the|my|its|it) \w+ on)( |$)/;

/** No doubt: what is named right behind is not there. */
export const ABSENT_BEFORE: readonly RegExp[] = [
  // "no blanket", "out of the cold frame", "forgot the fleece"
  /(^| )(no|without|wo|sans|zero|nil|neither|nor|lacking|lacks?|lost|forgot|forgotten|forget|missing|skipped|skip|sold|stole|borrowed my|lent|donated|minus)( (on|the|my|any|even|a|about|out))?$/,
  /(?<!made|make|built|build|built it|made it|best)( |^)(out of|out from under|out from|away from|out the)$/,
  // "didn't put the blanket on", "not in the cold frame", "never got round to the fleece"
  new RegExp(
    `(^| )(${NOT}|nobody|no one|forgot to|forgotten to|neglected to|failed to|unable to|no time to|no chance to|too (late|tired|lazy|windy|dark|cold) to|without)( (?!(?:${FATE})( |$))\\w+){0,2} (${PUT})( on| up| out| over| back| any| a| the| round to| around to)*$`,
  ),
  // "took off the blanket", "left the blanket off" is `after`
  /(^| )(took|taken|take|taking|pulled|pull|ripped|tore|blew|blown|lifted|whipped|stripped|knocked|pushed|dragged|threw|left)( \w+)? (off|of|away|out|aside)$/,
  /(^| )(ate|eaten|chewed|stole|nicked|pinched|shredded|destroyed|burned|burnt|wrecked|ruined|flattened)( up)?$/,
  /(^| )(if only( \w+){0,5}|promised( \w+){0,2}|(keep |been )?meaning to( \w+){0,3}|(id|ive|had|i) planned( \w+){0,2}|ran out|run out|refuse to (use|put|buy|own)( \w+)?)$/,
  /(^| )(removed|removing|uncovered|stripped|unwrapped|rolled up|rolled back|folded up|folded away|packed away|put away|opened|unzipped)( up| the| my)*$/,
  // "my neighbour has a cold frame"
  new RegExp(
    `(^| )(${PERSON})s?( \\w+)? (has|have|had|owns?|got|uses?|used|using|swears? by|runs?|built|bought|with|grows? in|keeps? (hers|his|theirs|them|it) in|puts?|recommends?|suggests?)$`,
  ),
  // "I wish I had a cold frame", "should have put", "was going to use", "ordered a"
  /(^| )(wish|wished|wishing|if only)( (i|we|it|they|she|he|had|have|owned|was|were|could|to|would|got|put|used|for|under|in|my|CROP|there|afford))*$/,
  /(^| )(should have|shouldve|should of|could have|couldve|would have|wouldve|ought to have|meant to|intended to|planned to|wanted to|was going to|were going to|was gonna|was about to|was supposed to|were supposed to|nearly|almost)( \w+){0,4}$/,
  /(^| )(ordered|ordering|on order|waiting for|waiting on|awaiting|saving for|saving up for|shopping for|looking for|dreaming of|dream of|thinking of (getting|buying)|thinking about (getting|buying)|hoping to get|hoping for|(going|need|want|have|plan|planning) to (buy|get|order|build|make)|buying|building|no money for|cant afford)$/,
  // "used to be under", "moved from", "until yesterday in"
  /(^| )used to (be|have|live|sit|grow|use|keep)( \w+){0,3}$/,
  /(^| )(moved|came|come|brought|taken|took|transplanted|evicted|fresh|straight|back|planted out|set out|dug)( \w+){0,3} (from|from under|out)$/,
];

/** No doubt: what was named just before is not there. */
export const ABSENT_AFTER: readonly RegExp[] = [
  // "blew off", "has fallen down", "got ripped away"
  /^((i|the|on|has|have|had|was|were|is|are|got|gets|just|all|then|already|been|wind|half|completely|totally|must|over|it|them|\w+ly) ){0,5}(blew|blown|flew|flown|fell|fallen|slid|slipped|came|come|ripped|torn|tore|stripped|knocked|pulled|taken|took|lifted|swept|carried|dragged|whipped|thrown|threw|tossed|rolled|left)( (all|right|clean|straight|half|back|it|the|this|last))? (off|away|apart|down|loose|aside|up|open|out|over the fence|next door)( |$)/,
  /^((on|the|is|was|are|were|has|have|had|been|got|just|now|all|my|still|already|lid|door|doors|ends|sides|top|it|wide|left|being|kept|sitting) ){0,4}(off|open|wide open|gone|missing|stolen|lost|ajar|propped|vented|unzipped|collapsed|smashed|crushed|destroyed|wrecked|trashed|flattened|shattered|melted|ruined|unused|absent|elsewhere|borrowed|rolled up|rolled back|folded up|packed away|put away|away)( |$)/,
  // "blew into the creek", "washed out", "raked off yesterday", "isn't"
  /^((the|on|has|have|had|was|were|is|are|got|all|just|been|wind|skin|film|sheet|sheeting|cover|s) ){0,3}(blew|blown|washed|raked|nicked|pinched|swiped|snatched|eaten|stomped|trampled|swept|stolen|scattered|burned|burnt|gone|bolted)( (clean|right|all|flat))?( (into|out|off|away|across|down|to|over|by|in|when|with|from|last|apart)( |$)|$)/,
  /^((skin|film|sheeting|cover|plastic|lid|top) )?(ripped|torn|tore|blown|blew|came|pulled|peeled)( (clean|right|all|straight))? (off|away|apart)( |$)/,
  /^(isnt|arent|wasnt|werent|hasnt|havent|didnt|not)$/,
  /^((it |that |which )?(stood|stands|sat|sits|hung|stayed|lay)) (wide )?open( |$)/,
  // "is still in the shed", "in the wash"
  /^((on|is|was|are|were|still|sitting|stored|packed|folded|back|up|away|stuck|left|all|just|currently|hanging|lying|drying|down) ){0,4}(in|inside|at|on|under|out in) ((the|my|our|a|his|her|its) )?(wash|laundry|dryer|garage|shed|house|barn|attic|basement|cellar|car|truck|trash|bin|rubbish|skip|store|shop|mail|post|closet|loft|cupboard|porch|shelf|line|clothesline|washing line|box|bag|packet|package|cottage|office|floor|couch|sofa|dog|other|wrong|neighbou?rs|next)( |$)/,
  // "isn't on", "not closed yet", "never arrived"
  new RegExp(
    `^((on|is|was|are|were|has|have|had|it|they|i|we|just|still|but|and|that) ){0,3}(${NOT})( (?!(?:${FATE}|off|open|blown|gone|removed)( |$))\\w+){0,3} (on|over|down|there|closed|shut|used|up|out|arrived|come|came|here|yet|put|laid|pulled|covering|back|it|them|available|around|installed|built|finished|with|own|have|have yet)( |$)`,
  ),
  /^((on|is|was|are|were) ){0,2}(on order|in the mail|arriving|arrives|comes (on |next |in )|coming (on |next |in )|not yet|for (next|the other|another))/,
];

/** "blanket: no", "fleece? none", "cold frame = not". */
export const ABSENT_BEHIND =
  /^\? what COVER|^(on )?([:=?-] ){1,2}(no|nope|nah|none|not|nada|nil|never|n|x|0|off|negative|NUM off)( |$)|^(on )?(no|nope|nah|none|nada|nil|never)( [,.;!?]|$)/;

/** Said later of "it": "had a blanket on but it blew off", "then the wind took it", "but I forgot". */
export const ABSENT_LATER: readonly RegExp[] = [
  /(^| )(it|they|that|those|both|which|theyve|its|thing|one)( (has|have|just|all|then|got|had|was|were|must|is|are|long|since)){0,3} (blew|blown|flew|flown|fell|fallen|slid|slipped|came|ripped|torn|tore|stolen|collapsed|gone|missing|off)( (off|away|apart|loose|down|over))?( |$)/,
  /(^| )(took|taken|pulled|ripped|tore|stripped|lifted|blew|removed|carried|whipped|knocked|stole|borrowed|grabbed|lost|forgot|sold)( (it|them|that|both|everything|those))( |$)/,
  /(^| )(mine|ours|i|we|it|they) (isnt|arent|wasnt|werent|havent|hasnt|didnt|dont|couldnt|never did|refused)( (any ?more|yet|so|on|now))?( [.,;!?]|$)/,
  /(^| )(its|it is|theyre|they are|it|they)( (is|are|was|were|all|still|back|now|just|lying|sitting)){0,3} (in|at|on) (the|its|my|a|an|their|our) (ditch|creek|box|boxes|house|shed|garage|car|fence|trees?|neighbou?rs|wash|attic|barn|closet|bag|road|field|river|hedge|pond|loft|truck|store|mail|floor|ground)( |$)/,
  /(^| )(never used (any|one|it)|stood open|stands open|isnt over anything|not over (anything|it|them)|(hanging|flapping|lying|caught|stuck) (on|in) the|never used any|never used one)( |$)/,
  /(^| )(but|then|and|,) (i |we |ive |have |just |completely |totally |clean )*(forgot|forgotten|didnt|havent|hadnt|couldnt|never did|never got|ran out)( |$)/,
];

/** "Lettuce in a cold frame, the lid's open": a part of it says so, in a clause of its own. */
export const PART_OPEN =
  /(^| )(lids?|doors?|sash|top|vents?|flaps?|sides?|ends?|glass|lights?|roof|panels?|panes?|plastic|cover|it)( (is|are|was|were|has|been|left|got|still|wide|all|being|both|just|had|blew|came|fell)){0,4} (open|off|up|gone|missing|broken|smashed|away|ajar|rolled up)( |$)|(^| )(open|no|without|missing|forgot to close|forgot to shut|left open)( (the|a|any|its|my))? (lids?|doors?|sash|top|roof|glass|lights?|ends?|sides?)( |$)/;

/** Said anywhere of no cover in particular: enough to doubt those that are named. */
export const DOUBTFUL_ANYWHERE =
  /(^| )((blew|blown|flew|flown|fell|slid|slipped|ripped|came|come|took|taken|pulled|tore)( (it|them|everything|that|all))? (off|away|apart|loose)|forgot|forgotten|stolen|wish|if only|used to|no longer|any ?more|didnt (put|cover|get|close|shut|have)|havent (put|covered|got|closed|had)|hasnt (been|got)|wasnt (on|covered|closed)|not covered|was (going|gonna|supposed|meant)|meant to|in the (shed|garage|wash|mail)|too late to|ran out)( |$)/;

/** May or may not be on: these leave it open, wherever they stand in the clause of the cover. */
export const DOUBTFUL: readonly RegExp[] = [
  new RegExp(
    `(^| )(${NOT}|no|without|none|neither|nor|nothing|nobody|hardly|barely|instead of|rather than|forgot|forget|forgotten|lost|missing|gone|stolen)( |$)`,
  ),
  /(^| )(blew|blown|blow|blows|flew|flown|fell|fallen|falls|slid|slides|slipped|slips|slipping|ripped|rips|torn|tore|tear|tears|shredded|holes?|holey|gaps?|split|punctured|chewed|snapped|burst|in (pieces|tatters|shreds)|would be (nice|good|great|lovely)|split|punctured|chewed|snapped|burst|in (pieces|tatters|shreds)|collapsed|collapses|removed|removing|removes|broke|broken|cracked|open|opened|opens|ajar|propped|vented|unzipped|loose|unpegged|half off|off|away)( |$)/,
  /(^| )(yesterday|earlier|used to|until|till|formerly|previously|ago|last (week|month|year|winter|fall|autumn|spring|season|time)|once|before|normally|usually|typically|always|sometimes)( |$)/,
  /(^| )(might|maybe|perhaps|probably|possibly|hopefully|hope|hoping|supposed|meant|plan|plans|planning|planned|intend|intending|ordered|order|buy|buying|bought|considering|thinking|unsure|whether|unless|wish|want|wanted|should be|should have|almost|nearly|half|partly|partially|tried|try|trying|arrives?|arriving|later|gonna put|going to put|going to throw|going to (get|use|add|cover|lay|pull)|ready to go|on hand|handy|spare|in reserve|available|i think|i guess|i believe|i assume|if it (stays|holds)|stays on|holds up)( |$)/,
  /(^| )if (the |my |our |a )*COVER( |$)/,
  // "Is the blanket still on?": who asks does not know.
  /^(is|are|was|were|did|does) (the |my |our |that |their )*COVER (still |really |even )?(on|there|in place|stay|hold)( |$)/,
  /(^| )struckout( |$)/,
  /(^| )(neighbou?rs?|friends?|brother|sister|cousin|uncle|aunt|next door|somebody|someone)(s)?( |$)(?!(CROP|put|covered|threw|laid|tucked|pulled|says|said))/,
];

/** "was under a blanket", "had fleece on": said of a night that is not the one asked about. */
export const PAST_BEFORE =
  /(^| )(was|were|had|raised|started|germinated|spent|came from|come from|came out|moved from|from)( \w+){0,3}$/;
export const PAST_AFTER = /^(was|were|had been)( |$)/;

/** A denial that is spent on something else before it reaches the cover: "won't survive under", "not sure about". */
export const SPENT_DENIAL = new RegExp(
  `(^| )((?:${NOT}|no|hardly|barely|or not|if not|why not|no idea|no (?:problem|worries|clue|frost|rain|sun|snow|light|other|more|question|doubt|way))(?: (?!COVER)\\w+){0,2} (?:${FATE})|or not|if not|why not|no (?:problem|worries|frost|rain|sun|heat|heater|heating|other|question|doubt|way|longer than)|not NUM|not (?:yet )?STATE|(?:yes )?or no|y n|no more than NUM)(?= |$)`,
  'g',
);

/** The plants are out now: what they were raised or kept in is behind them. */
export const OUT_NOW = /(^| )(now|since|outside now|are out|is out|out now|currently)( |$)/;

/** "if I throw a sheet over": what the asker supposes is what is asked about. */
export const HYPOTHETICAL_BEFORE =
  /(^| )(if|what if|when|once|could|can|should|would|suppose|say|and|will it help to) (i|we|it|they|theyre|its|CROP)( (just|also|only|do|then|even|double|are|is))* (put|throw|lay|add|use|cover|pull|have|had|get|got|give|wrap|drape|toss|leave|in|under|with|stick|place|tuck|set|keep|double|up|STATE)( \w+){0,3}$/;

/** … unless it is its absence that is supposed: "if I leave the frame open". */
export const OFF_AFTER_ALL = /(^| )(off|open|away|not|dont|havent|removed)( |$)/;

/** "should I take the fleece off?", "can I leave the frame open?": a deed that is asked about. */
export const ASKED_DEED = /(^| )(should|shall|can|could|may|do|when|must|time to) (i|we)?( |$)/;

/** It is not said to have happened. */
export const IF_OR_MAYBE =
  /(^| )(if|might|may|could|in case|unless|would|will|worried|afraid|scared|not|didnt|hasnt|havent|never|maybe|probably|think|unsure|whether)( |$)/;

/** "no blanket or fleece": what is true of the first is true of the second. */
export const LISTED_BEFORE = /COVER( on)?( ,)? (or|nor|\/)( (a|the|any|my|even|nor))*$/;

/** "the blanket and the fleece both came off": what follows the list is said of each. */
export const LISTED_BEHIND = /^(and|plus|or|nor) ((the|a|my|both) )?COVER( both)? ?/;

/** "uncovered in the greenhouse", "nothing but a sheet": a bare word that speaks of what lies inside or besides. */
export const OVER_BARE_BEFORE = /(^| )(in|inside|under|within|into|but|except|besides|than|only|just)$/;

/** "should I put a blanket on it?": with it and without it is what is asked. */
export const PROPOSED_BEFORE =
  /(^| )(should|shall|must|ought|better|do|need|have|worth) (i|we|it|they|to)( (need|have|really|just|bother|be|to|putting|adding))* ?(put|throw|lay|add|use|cover|pull|get|give|wrap|drape|toss|need|with|it|them|CROP)?( (with|on|to|it|them|CROP|over|the))*$/;

export const LIES_UNDER = /(^| )(in|inside|under|beneath|within|with)$/;
export const FATE_BEHIND = /^((is|are|be|get|gets|will be|was|were) )?(lost|gone|ruined|destroyed|dead|toast)( |$)/;

/** … and neither is it said to be on. */
export const IF_OR_MAYBE_ON = /(^| )(if|might|unless|unsure|whether|hopefully|know if|maybe)( |$)/;

/** What says that a cover lies over the plants: "under the", "with a", "I put a". */
export const ON_BEFORE =
  /(^| )(under|in|inside|inside of|within|beneath|underneath|below|with|w|wearing|has|having|covered (with|by|in|over with)|wrapped (in|with)|draped (in|with)|topped (with|by)|lined with|through|its|theyre|is|are|been|plus|and|but only|only|just|from under|over|under just|(i|we|ive|weve|already|just|have|has|ill|well|were|gets?|got|wife|husband|and) (put|putting|got|laid|threw|thrown|tossed|draped|pulled|added|used|using|use|tucked|wrapped|spread|lay))( (CROP|them|it|everything|em|the bed) (in|under|with))?$/;

/** "on", "over them", "laid across": behind the cover. */
export const ON_AFTER =
  /^((is|are|was|were|been|already|now|still|all|thats|which|has been|goes|will be|lying|laying|sitting|tight|doubled|folded) ){0,3}(on|over|laid|lying|laying|covering|draped|pegged|pulled|tucked|wrapped|spread|around|round|inside|underneath|under|below|thrown|weighted|shut|closed|zipped|stretched|doubled|enough|do|doing|keep|keeps|hold|holds|save|help|protect|survive|plus|and|as well|too|for|at|with)( |$)/;

/** Words that say nothing of where a cover is; a clause of these alone names it as what lies there: "chard low tunnel 14F". */
export const PLAIN_WORDS: ReadonlySet<string> = new Set(
  (
    'CROP NUM SKY STATE BARE COVER f c deg degs degree degrees fahrenheit celsius minus negative below zero plus above tonight tomorrow night morning today week at and or to the a an my our is are am it its they them be will would ' +
    'can could does do did should shall make makes made it survive survives live lives die hold holds ok okay fine safe enough good alright all right toast dead please in under with w over low lows high of for what which how cold ' +
    'forecast forecasted expected outside out here just only on me i we you got so then if down going gonna get hit hits drop drops dropping yes no? think help hi hey thanks through thru take stand bear risk worry need big small leaf leaves ' +
    'plants bed beds garden raised this that these those also too as compare better best vs versus than between warmer does one two layers layer double single ice frost freeze more less about around say says near unheated - / + & " = : ° % x'
  ).split(' '),
);
