/**
 * Ordinary English: never a slip for a crop or a cover, and never a plant that the table lacks. Base forms; endings are
 * taken off before looking here.
 */
export const ORDINARY_ENGLISH = `
fetch windowsill barrel cage scrap miracle walker porch arbor arbour tub trough maple crown vat trellis carport ditch patio balcony coincidence bulb ivy gallon terrace deck stoop creek goat hubby landlord dwarf heirloom crinkled curled curly frilly rainbow slicing mesclun bush runner bolt hybrid storage keeper paste vining trailing drumhead pointed slab
sale documentation software copyright format warranty written permission contract connection distribution distribute indirect consequence portion
performance configuration possibility promote install restriction interruption input output fee usage access variable development environment
reference description obtain known behavior behaviour mechanism equivalent location explicit earlier appropriate commercial experimental manual taken
applied reset initial consistent conflict unnecessary trademark disabled easier collection actual readable patent responsible affected affect
requirement thrown bound unlike held worldwide shown filter progress cache session utility verify told static contributed contribute digital browser
element enable disable alternative sample framework arbitrary identical validation dependency difference download involved effective combination
trigger triggered forgot sequence strategy replacement discussion determine technical template warning pending trace primarily primary interactive
terminal modify obsolete submit improvement edit merge cleanup certificate accuracy handful architecture restricted absolute visual exclusive ability
legacy universal upgrade queue reasonably provision subset automatic accompany significant restore numeric omit hierarchy convenience suitable retry
unexpected chosen creative department guideline outstanding prohibit forbid symbol defect remainder strictly destination quote generic traditional
incomplete minimal keyword approve circumstance defense defence notable unused robust absence heap successful intent confusion introduction infinite
privacy essential elsewhere nonsense leaked academic flush smith brought hint transform convenient abstract lee advantage came led dumb register
portable exchange publication concept beneficial interact verbose historical insight ambiguous dash scientific given whom caught gone began begun done
drawn driven eaten fallen felt flown forgiven frozen hidden hung kept laid learnt lent lit lost meant met paid proven ridden risen sang sought sent
shaken shone shot slept slid spoken spent spoilt stood stolen struck stuck sung swept swollen sworn swum taught torn thought understood woke worn
woven wound wrung overdue nearby afterwards beforehand anytime someday sometime nowadays recent lately seldom rarely usually normally typically mostly
partly entirely roughly exactly precisely properly luckily sadly oddly strangely surprisingly obviously apparently presumably supposedly allegedly
honestly frankly seriously literally basically essentially generally specifically particularly especially mainly largely hugely barely hardly scarcely
acre allergy ambulance anniversary appetite asthma auction bakery balloon banker barber bargain blanketing bride bruise bucket bungalow butcher
calculator calendar cancer candle canvas carpenter cartoon cathedral ceiling celebrity cemetery ceremony championship chemist choir cinema circus
clinic clown cookie cottage cough counter coupon cricket crocodile cupboard curtain cyclist dancer deadline dentist detective diamond dinosaur divorce
drawer dragon drummer earthquake elephant elevator employee engineer envelope escalator exam exhibition factory fairy farmer fashion festival fever
fiction firefighter fisherman fitness flag flame flood florist flu fluff footage forum freelance freezer funeral furniture gallery gambling gangster
garage ghost giraffe glove goalkeeper goddess governor grammar graveyard grocery guitarist gym hairdresser hammer handbag harbor harbour headline
headphone helicopter helmet hockey homework honeymoon hospital hostage hurricane immigrant insect insurance invitation jewel jewelry journalist judge
juice jungle kangaroo karate keyboard kidney kilometer kingdom kitchen knitting laboratory landlord laptop lawsuit leaflet librarian lifeguard lion
lizard lottery luggage magician mailbox manager marathon mattress mayor mechanic medal meditation mermaid microphone microwave millionaire miracle
missile mortgage mosque mosquito motorbike motorcycle murderer musician napkin neighborhood neighbourhood nightmare novel nurse opera orchestra
ostrich painter painting palace parachute parade paradise passport pastry patient penguin pension photographer pianist pirate plumber poison
politician pollution postcard poster pottery priest printer prisoner psychology puppet pyramid quarrel quiz raccoon racing railway receipt referee
refugee religion rescue resort robot rocket royal rumor sailor salary salesman sandal satellite scarf scholar scientist scooter scorpion sculpture
secretary senator servant shampoo shark shelter sheriff shipment shopping shower singer sister skeleton ski skirt skull sleepy slogan smartphone
sneeze soccer sofa soldier spaceship spectator spinal spoon squirrel stadium statue stomach storage stranger strawman suitcase supermarket surgeon
surgery swimmer sword symphony tablet tailor taxi teacher teenager telescope temple tennis terrorist thief thriller tiger toilet toothache toothbrush
tourist tower trainer traitor treasure trophy trousers trumpet tsunami tutor tuxedo twin tyre umbrella uniform vampire vegan vegetarian veterinarian
violin visa visitor volcano volleyball volunteer voyage waiter waitress wallet wardrobe warehouse warrior wedding whale wheelchair widow witch wizard
wolf workshop wrestling yacht yoga zebra zombie zoo product production australian austrian brasil sweden swedish tolerate apparatus speaker dedicate
dedication isolation oriented putty linden spelling linen backend italian german roman multiplier culminate catalog crossover santa woken header
optional retain command commander log logger timer compile setting abort graphic specify hook resolve supply execute stash oracle create creation
handler inspect expose parallel bundle export stats alter prime bracket compress convert compute depth lint predicate slash clone routine stale scope
decode consume selection spawn presence latent unrelated overload incur plumb synopsis pointer partial slack compose fixture expansion steer inject
pursuant propagate twilight chose multiply infer alike perch isolate sufficient beret inflate prone snippet extensive wireless convey solstice cure
shield heath resume approximate preset edible arise choke globe compete heading mutate sunlight instant wane waning toddy sideways grace adopt spy
stall caret catalogue bias overlap negation particle treaty slot swap whine additive moderate cube latex springy blown outlive bubble stack thorough
composite curry inflation radical comet mass collapse correlate expend organize crawl tolerable slave vest conceive weaken wart nuke crept regain
mange periodic spool risky tamper quill annual radiative deference crow carve coral choral corral cinder clover cleaver crumble fickle pickle rattle
harry alice chris steve scott walter marco charles peter carson cindy vince cooper bailey tucker drake burton bob bobby jack jake james jane janet
jason jean jeff jenny jerry jessica jim joan joe john johnny joseph julia julie karen kate kathy keith kelly ken kevin kim laura lauren linda lisa
louise lucy luke maria mark martin mary matt matthew megan michael michelle mike molly nancy nathan nick nicole oscar pam pat patrick paul paula phil
philip rachel ralph ray rebecca richard rick rita robert ron ruth ryan sally sam samantha sandra sarah sean sharon sheila simon sophie stan stephen
sue susan ted teresa terry thomas tim toby tom tony tracy victor wendy william alex alan albert amanda amy andrea andrew angela ann anna anne anthony
barbara ben beth betty bill brian carl carol caroline catherine claire colin craig daisy dan daniel dave david dawn debbie dennis diana diane donald
donna doug ed eddie edward eileen elizabeth ellen emily emma eric erin frank fred gary george gloria graham greg hannah helen henry carbon monoxide
dioxide chick basic basin basis basal bison brazil chart charm share shared sharp shards carpet carton cartel carrier parrot carry collar dollar
collared colander kennel funnel channel fennec tunnelling lattice letter latter lecture lettering spanish finish spin radius reddish relish ravish
union opinion pardon parson parlay party parcel paisley person parsing turning turnpike turbine tuning celestial salaries cellar seller century
peppered paper popper pepperoni pumping potable potash tomorrow tomb theme time them leaker lake leash least lease garlicky garland gallic melody
lemony mellow mention million crest crease cross press dress creek crass stress endives ending engine edition native sorry sorrow barrel shallow shall
shell chime chisel chip olive live alive active baggage garbage cabin cabinet brothel brocade brochure broker brother broken caution cautious couch
coach beast beaten beating beat bear been seen bees breeze breezy fleet fleeting fleas flee fleeced sleeve fence fenced frames framed farm blanked
blankly blinking blank blanks sheer sheep shift shirt sheath short street sweet sweat sweeter quite quiet quit built guilt quality equal tarmac target
tart stare strap stray strain strange strong straight snowy show slow know hooked hopeful hope hop hopped loops loop hoped horse house jugs jug juggle
mulched much match matter master plasma plaster place plastics elastic polite policy police poll pole glance grass gloss glad closet close clothe
clothes clothing cloth cloud clout clothed claim clash class planet plane plan plate play players lawyer lay leaf leaves leave level lever squash
squad square squeeze squeak rockets locket pocket racket basket market mustang mustn mixture mince minor miner mint mind mine mash march mask massage
cashew cash caper copper corner corn core curb curve current currant speed spend spread artist article raspberry barberry number member encumber
remember demon lesson pea peace pearl peak peek pear peel peas beans bean bans beams brains radio ration rational ratio savory savor savvy salsa
salsify satisfy sausage savage service surface source sauce able about above absolutely accept accident according account ache across act action
actually add address adult advice afraid after afternoon again age ago agree ahead air alarm album all allow almost alone along already also although
always amaze america american among amount ancient and anger angry animal announce another answer ant any anybody anyhow anyone anything anyway
anywhere apart apartment appear apple application apply appreciate approach area argue arm army around arrange arrive art as ask asleep aspect assist
assume at attach attack attempt attend attention attract audience aunt author authority autumn available average avoid await awake award aware away
awful baby back background bad badly bag bake balance ball balcony band bank bar bare bark barn base baseball bath bathroom battery battle be beach
beam beard beautiful beauty because become bed bedroom bee beer before begin behave behind being belief believe bell belong below belt bench bend
beneath benefit beside best bet better between beyond bicycle big bike billion bird birth birthday bit bite bitter black blade blame bleed bless blind
block blog blood bloom blow blue board boat body boil bomb bond bone book boot border bore born borrow boss bot both bother bottle bottom bought bowl
box boy brain branch brand brave bread break breakfast breath breathe brick bridge brief bright bring broad broke brown brush budget bug build builder
building bunch burn burst bus bush business busy but butter button buy by cable cafe cake call calm camera camp can cancel candy cap capital captain
car card care careful carefully case cat catch cause celebrate cell cent center central centre certain certainly chain chair challenge chance change
chapter character charge charity chase chat cheap cheat check cheek cheer cheese chef chemical chest chicken chief child children china chocolate
choice choose church cigarette circle citizen city civil classic classroom clean clear clearly clever click client climate climb clock closely club
clue coal coast coat code coffee coin cold coldest collect college color colour column come comfort comment commit common community company compare
complain complete computer concern condition conduct confirm confuse connect consider constant contact contain content contest context continue
control conversation cook cool copy correct cost cotton could council count country couple courage course court cousin cover cow crack crash crazy
cream credit crime crisis critic crop crowd cruel cry culture cup curious currency custom customer cut cute cycle dad daily damage damp dance danger
dangerous dark darling data date daughter day deal dear debate debt decade december decide decision deck deep deer default defeat defend define
definitely degree delay deliver demand deny depend describe desert deserve design desire desk desperate despite destroy detail develop device devil
diary did die diet differ different difficult dinner direct direction dirt dirty disaster discount discover discuss disease dish disk display distance
district divide do doctor document does dog dont door double doubt down dozen draft drag drain drama draw dream drift drink drive driver drop drug
drum dry due dull during dust duty each ear early earn earth easily east easy eat economy edge editor educate effect effort egg eight either elect
electric electricity eleven else email emergency emotion empty encourage end enemy energy enjoy enough ensure enter entire entry equip error escape
essay establish etc even evening event eventually ever every everybody everyone everything everywhere evidence exact example excellent except excite
exclude excuse exercise exist exit expect expense expensive experience expert explain explore express extend extra extreme extremely eye face fact
factor fail failure fair fairly faith fall false familiar family famous fan fancy fantastic far fast fat father fault favor favorite favour favourite
fear feather feature february feed feel feet fell fellow female few field fifteen fifth fifty fight figure file fill film final finally finance find
fine finger fire firm first fish fit five fix flat flavor flight flip float floor flour flow flower fluid fly focus fog fold folk follow food fool
foot football for force foreign forest forever forget forgive fork form formal former fortune forty forward found four fourteen fourth fox frame
france free freedom freeze french frequent fresh friday fridge friend friendly frighten from front frost fruit fuel full fun function fund funny fur
further future gain game gap garden gas gate gather gave gear general generate gentle gentleman gently get giant gift girl give glass global glory go
goal goat god gold golden golf good goodbye got govern government grab grade gradually graduate grain grand grandfather grandma grandmother grandpa
grant graph gray great greatly green greet grey ground group grow grower guard guess guest guide guitar gun guy guys habit had hair half hall hand
handle handy hang happen happily happy hard hardware harm hat hate have he head headache health healthy hear heart heat heaven heavily heavy height
hell hello help helpful hence her here hero hers herself hesitate hey hi hide high highly highway hill him himself hire his historic history hit hobby
hold hole holiday hollow home honest honey honor hopefully horrible horror host hot hotel hour how however hug huge human humor hundred hungry hunt
hurry hurt husband ice idea ideal identify if ignore ill image imagine immediate immediately impact important impossible impress improve in inch
include income increase indeed independent indicate individual indoor indoors industry inform information injury inside insist instance instead
instruct instruction intend interest internal internet interview into introduce invest invite iron island issue it item itself jacket jail january jar
jealous jeans job join joke journey joy july jump june junior jury just justice keen keep key kick kid kids kill kind king kiss knee knife knock
knowledge label lack lady ladder lamp land landscape language lap large last late later latest laugh laundry law lawn lazy lead leader league lean
learn leather left leg legal lemonade lend length less let liberty library license lid lie life lift light lightly like likely limit line link lip
list listen literature little lively liver living load loan local locate lock lol long look loose lord lose loss lot lots loud love lovely low lower
luck lucky lunch machine mad magazine magic mail main maintain major make male man manage manner many map marriage marry massive mate material math
maximum may maybe me meal mean meaning means meanwhile measure meat media medical medicine medium meet meeting memory men mental menu mercy mere
merely mess message metal method mid middle midnight might mile milk minimum minister minute mirror miss mission mistake mix mode model modern mom
moment monday money monitor month mood moon moral more morning most mother motion motor mount mountain mouse mouth move movement movie mr mrs mud
multiple mum murder muscle museum music must my myself mystery nail naked name narrow nasty nation national natural naturally nature near nearly neat
necessarily necessary neck need negative neighbor neighbour neither nervous nest net network never nevertheless new newly news newspaper next nice
night nine nitro no nobody nod noise noisy none noon nope nor normal north northern nose not note nothing notice november now nowhere nut object
obvious occasion ocean october odd of off offer office officer official often oh oil ok okay old on once one online only onto open operate opportunity
oppose option or order ordinary organ organic origin original other others otherwise ought our ours ourselves out outcome outdoor outdoors outfit
outside oven over overall own owner pace pack package page pain paint pair pale pan panel panic pants paragraph parent park parliament part particular
partner pass passage passenger past patch path pattern pause pay pen pencil penny people per percent perfect perfectly perform perhaps period
permanent permit personal personally pet phase phone photo photograph phrase physical piano pick picture piece pig pile pillow pilot pin pink pipe
pitch pizza plain plant planter plastic platform player please pleasure plenty plot plus poem poet point polish political politics pool poor pop
popular population port position positive possible possibly post pot pound pour power powerful practice pray prefer pregnant prepare present president
pressure pretend pretty prevent previous price pride prince princess principle print prior prison private prize pro probably problem procedure process
produce professional professor profit program project promise proof proper property protect proud prove provide public publish pull pump punch punish
pupil purchase pure purple purpose push put puzzle quarter queen question quick quickly race radiation rail rain rainy raise ran random range rapid
rare rate rather raw reach react read reader ready real realise realistic reality realize really rear reason reasonable recall receive recently recipe
recognize recommend record recover red reduce refer reflect refuse regard region regret regular reject relate relation relationship relative relax
release relief rely remain remark remind remote remove rent repair repeat replace reply report represent request require research reserve resist
resource respect respond response rest restaurant result return reveal review reward rice rich ride right ring rise risk river road rob role roll
romantic roof room root rope rose rough round route row rub rubber rude rug ruin rule run rush sad safe safety said sail sake salt same sand sandwich
sat saturday save saw say scale scare scene schedule school science score scream screen sea search season seat second secret section secure security
see seed seek seem select self sell send senior sense sensible sensitive sentence separate september series serious serve set settle seven several
severe sex shade shadow shake shame shape she shed shelf shine ship shock shoe shoot shop should shoulder shout shove shut shy sick side sigh sight
sign signal silence silent silly silver similar simple simply since sincerely sing single sink sir sit site situation six size skill skin skip sky
sleep slice slide slight slightly slip slope small smart smell smile smoke smooth snake so soap social society soft soil solid solution solve some
somebody somehow someone something sometimes somewhat somewhere son song soon sore sort soul sound soup south southern space spare speak special
species specific spectacular speech spell spider spirit spite split sport spot spray spring stable staff stage stair stake stand standard star start
state statement station stay steady steal steam steel steep stem step stick stiff still stone stop store storm story stove stream strength stretch
strike string strip structure struggle student study stuff stupid style subject succeed success such sudden suddenly suffer sugar suggest suit sum
summer sun sunday sunny sunset sunrise super support suppose sure surely surprise surround survey suspect swear swim swing switch system table tail
take tale talk tall tank tap task taste tax tea teach team tear technology teen telephone television tell temper ten tend tender term terrible
terribly territory terror test text than thank thanks that the theatre their theirs then theory there therefore these they thick thin thing think
third thirsty thirteen thirty this those though thousand thread threat three throat through throughout throw thumb thunder thursday thus ticket tidy
tie tight till tin tiny tip tire tired title to toast today toe together token tone tongue tonight too tool tooth top topic total totally touch tough
tour toward towards towel town toy track trade tradition traffic trail train training transfer translate transport trap travel treat tree trend trial
tribe trick trip trouble truck true truly trunk trust truth try tube tuesday turn tv twelve twenty twice two type typical ugly ultimate unable uncle
under understand unfortunately unhappy unique unit unite universe university unknown unless unlikely until unusual up update upon upper upset upside
urban urge urgent us use useful user usual vacation valley value van variety various vast vegetable vehicle verb version very via victim victory video
view village violence visit voice volume vote wage wait wake walk wall wander want war warm warn wash waste watch water wave way we weak weakness
wealth weapon wear weather web website wednesday week weekend weekly weigh weight weird welcome well went were west western wet what whatever wheat
wheel when whenever where whereas wherever whether which while whisper white who whole whose why wide widely wife wild will willing win wind window
wine wing winner winter wipe wire wise wish with within without witness woman women won wonder wonderful wood wooden word work worker world worried
worry worse worst worth would wow wrap write writer wrong wrote yard yeah year yell yellow yep yes yesterday yet you young your yours yourself youth
zero zone aint arent cannot cant couldnt couldve didnt doesnt hadnt hasnt havent hed heres hes id im isnt itd itll ive lets mustnt oughtnt shant shes
shouldnt shouldve somebodys thatd thatll theres theyd theyll theyre theyve wasnt weve werent whatll whats whered wheres whos whove wont wouldnt
wouldve yall youd youll youre youve gotta gonna wanna kinda sorta lemme gimme dunno yup nah hiya howdy cheers thx ty pls plz btw fyi imo idk omg asap
tbh ps hmm uh um err eh haha lmao bro dude folks sup yo bye freak wee outta cuz cos bc tho thru u r ur ya em til nite gotcha anyways whatnot somethin
nothin aye barrow bog boulder bulb burrow canopy chalk clay clod clump compost crust ditch dormant drill drip edging elevation evergreen exposure
fertile fertilize fertilizer flake foliage fungus furrow germinate gopher grub gust habitat hail hedge hoe humid humidity humus hybrid irrigate knob
leafy limp loam lush manure meadow microclimate mildew moist moisture mole moss mound mow mulch nectar nematode nutrient orchard peat perennial pest
ph plough pollen pollinate pond potting prune puddle rabbit rake ridge ripe ripen rot rotate rotation rototill sapling sap shear shovel shrub slug
snail sod soak soggy sow spade spike sprig sprout sprinkle stalk stump stunt swamp terrace thatch thaw tiller topsoil trellis trim trowel tuber twig
veggie vine vole wasp weed wheelbarrow wilt windbreak windy wither worm yield zonal thermometer thermostat sensor probe gauge forecaster meteorologist
meteor radiational advection dew dewpoint fahrenheit celsius inversion gale drizzle sleet slush blizzard flurry flurries frosty icy chilly chill nippy
brisk brutal bitterly frigid arctic polar vortex coldish snap gadget heater heating warmed warmth toasty snug cosy cozy insulated drafty draught
draughty clip clothespin peg pegs pegged pinned weighted anchor anchored staple stapled tied tucked wrapped doubled folded stacked colder coldness
hotter cooler warmer wetter drier dryer tougher weaker younger older bigger smaller taller shorter thicker thinner lighter darker higher sooner longer
iceland canada england scotland ireland wales britain germany europe asia africa australia vermont maine ohio michigan wisconsin minnesota iowa dakota
nebraska kansas missouri montana wyoming idaho utah colorado oregon washington california texas oklahoma arkansas virginia carolina georgia florida
alabama tennessee kentucky illinois indiana pennsylvania york jersey connecticut massachusetts hampshire delaware maryland london paris berlin chicago
boston denver seattle portland buffalo ontario quebec alberta manitoba zealand stock bitcoin crypto netflix youtube google discord server admin
moderator password username login subscribe giveaway prompt ai chatgpt script alert html javascript python java sql insert delete nba nfl pasta burger
vodka tractor hose faucet plumbing boiler furnace radiator chimney fireplace hostel puppy kitten hamster hen hens rooster duck duckling turkey goose
pony donkey cattle calf lamb piglet kitty doggy goldfish turtle tortoise hive beehive humans hubby wifey grandkids nephew niece deicer antifreeze
windshield coolant diesel petrol gasoline wondering reckon hoping scared unsure thoughts tips helping helped kindly regards madam
`;
