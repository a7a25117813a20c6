/** English words one slip from a word the reader knows, and none: `npm run learn`, from the SCOWL lists. */
export const alike = `
abasement abode abort abound acceptably aching addend adder addled addling adjuster adsorption afterword afterwords
agates agent aground aided aiding ailing airing aliened alight aligner allowably alloyed alone alter anent aping
applier applies approached approved apron apter arched arching ardent arena argent aright armed arsed arsing ashing
aster attacked avenge babble babbled babbles babbling backer backs backyard backyards badger bagging bailey baited
baked baker bakers balances baled balling bally bands banes banking banks banning banns barbel bards barer barfly
barge barging barked barley barred barren basely basemen basic basil basing basis basked basses bather batter battle
battles bawled beading beaker beakers beaks beaming beaning beard bearding beards beater beating beatings beats
becks bedding beech beets begat beings belle belled belling bellow bells bench bending bents bests bettor bewaring
bilked bilking billet billy binning bitter blanch bland blankest blanking blanks blaring blaze blazed blazing bleak
bleaker bleep bleeping bleeps blend blending blends blinded blinds blinis blink blinker blobs blocker blocs blogs
bloke blots blowy blued blushed boars boast boasted boats bobble bobbled bobbles bobbling bodes bodge bodged boiled
bolas boles bolls bolus bonces bonding bones bonging bongs booster booted boots bores boring bosses botcher bottled
bottler bottlers bought bounce bounced bouncer bouncers bounding bouts bowers bowing bowler bowlers boxed boxer
boxers brace braced bracing braid braked brandy brave braved braving brawn brayed braying breach bread breading
breads bream breams breed breeding breeds brigs brine brink brinks briny broiler broilers brother brows brunch brunt
brushes bucked budded budding budgie budging bugged bugger bugging bugled bugling bulge bulges bulked bulking bulls
bully bumble bumbled bumbles bumbling bummed bumper bumph bumpy bunch bunged bungs bunks burble burbled burbles
burbling burbs burger buried burled burns burping burps burred burring bursa burying buses bushed bushes busies
busks butter buzzed buzzer buzzers cabled cabling caged cages caging cakes caking calla callas caller callus calmed
calming calved calving camped camps cancer caned canes caning cannon cants capacity caped capes caption capture
captures carboy cared cares caret caring carped carpel carper carton carts cased cashes cashing casino casks castes
casting casts catchy cation causes causing caved caver caves caving cawed cawing ceases ceasing cedes celled cells
certs chaff chaffed chaired champed chance chanced chancel changing chant chanted chanter chanters chants chapters
chard charm charmed charming charms charring chars charted charter chartered chartering charters charting chary
chase chased chases chasing chaster chats chatted chattel chattels chatterer chattier checker cheek cheeked cheeking
cheeks cheeping cheeps cheesed cheesy chert chewer chick child chillier chilly chipping chips chock chocking chocks
choker chomps chopper chore chores chose chuck chucked chucking chucks chunking chunter cinches circulatory clack
clacked clacks clammed clang clanged clanging clank clapped claps clasped clattered clatters cleaner cleaning cleans
cleansed clearer cleats cleaving clewed click clicked climber clime climes clinched clingy clink clinking clinks
clits cloak cloaked cloaking clocks clomped clomps clone cloned cloning clonk clonked clops closer closest closet
closets clove clover cloves clowns cloyed cloying cluck clucked clucks cluing clumped clung clutter cluttering
coaled coaling coasting coasts coating coats cocking codas coded coder coders codex coding coeds coffer cohered
coifs coiled coiling coins coking collapse collapses colts comas comber combing combs comer comers comet comets
commando commandos commas commend commends comped compete competed comping complected completer completes compress
condense condensed conduct cones confection confections conformation conformed coning conked contiguity contiguous
contiguously contract contractor contractors contracts controlled convection convector cooing cooker cooking cooks
coons cooper cooping coops coots copier coping copped coppery copter cords cored corer corers coring corked corks
corns corps corrode corrodes coshing counted county coups court coven covert covet coveted covey cower cowered
cowing cowling cowlings coxing coyer crack cradled cramped crane cranes cranking cranky crashed crawler creeds
creeks creel creels creep creepy crepe crepes crest crewed cricking cricks crisp crisply crisps crock crocked crone
cronies crony crooked cropper crops cross crowds crown cruet crushes crusted crypt cubed cuber cubers cubit cuing
culled culls cumin cunts curling currant cutie cysts daily daisy damage damages damming damped dampen dampens
dandling danging dapper dared daring darted dater dates dazed decaf decafs decal decals deceased decoy decoyed
decoying decoys decrease decreases decree decreed decries decry decrying defector defied deflective deiced deicer
deign deigned deigns delay delayed delaying delays deleted deliver delivers denier denies dented deplete deported
derive deriving designer detective deuce devise diary didoes didst diffuse diffused diffuses digit dipper direr
direst discarding discharged displaced displacing ditty diving doable doers doled domes donors doomed dooms doped
dosed doubled doublet doubly dozed drabs drafted drafting drafts drainer drams draping drawl drawling drawls drawn
drays dregs drenches dried dries drift drifter dripped drips drivel driven driver drivers drizzled drizzly drone
drooped drooping droops dropsy dross drover drubs drugging dryers ducats ducks duding duets dumper dumpers duped
duping durst dusky dustless dusts dutch dyslexia earthen earthy easing eater eights elating electronica emended
emery enact endearing endued engaged enrage enrages enraging entice erased eraser erode erodes ester estimates
eternal ether evacuate evacuates evaluated evaluating evaluation evaporate evaporated events exalt exceed excels
excerpt exchange exchanged exchanges excise excused exhort expert explode explodes explored extort fabled faced
faces facing factors faculty fairing fairly faked fakes faking fakirs fallowing falter falters faring farmed farted
farts fated fates fating faves faxes fazed fazes fazing feared feats feeds feeler feels felled felling fells felts
fender fends fests fever fiats fibber fiends fifer figured filed filers filler fillers fillet filling fills filmed
filth finder finders fines fining finis finisher finishes finite finks firer fires firing firmed firms fitter
fitters fiver fixer fixes flags flailed flailing flails flairs flakes flamed flames flaming flans flapped flapping
flaps flared flashers flashest flashy flask flattering flatus flaws flayed flays fleets fleshes fleshing flicked
flied flipper flipping flits flitted flitting floats flooder floored flooring flour flours flout fluffy flume flush
flusher flushes flushing flustering foaling foals foiling foils foods fooled foray forayed force forces forded forge
forged forger forges forgot forked forming forms forte forth forts fouler fount fours fowled foxed foxing framer
framing frats fraud freed freeing freewheel freezers frequent frequently frets friend fries frieze friezes frilled
frond fronted fronting fronts frosh froward fuggy fulled fulling fulls fumed fumes funds fusee fusees fussed fusses
gabbing gaggle gainer gales galleon galleons gallop gallops gallows games gapes gases gashed gasped gated gauged
gauze gazed gazes genning gerund giggled giggler giggly ginning given givens giver givers glads gland glans glared
glassed glassy glaze glazes gloss glosses glowing goads goggle golds goody goofs gooks goons goring gouge gouges
grabs grads grained grans grant grants grass grassed grasses grater grates grazed greaser greet greeter grill
grilled grills grind grinning groan groat groats groins groping grounder grout growl grows grubbing guest guests
gunned gutting gyves gyving hafts hairs hales halfway haling halve halved halving hammed hamming hampering handing
hangover haply happen hardest hardily hardness hardy haring harps harpy harry harts hasps hated haters hating hatter
hatting haunt haunting haunts haven havens haves hawing haying hazing headers headier headpin heady healed healer
healers healing heals heaped heaping heaps hearers hearing hears heart hearth hearths hearty heath heather heaths
heave heaved heavers heaving heeded heeding heeds hefted hefting hefts helped hemmed hemming hepper herbs herded
herder herding herds heretic hinging hints hipped hippy hither hitter hiving hoarse hocked hoeing hoers hokes hoking
holed homed homer homers homey homeys homing homos honed hones honing honked hooded hooding hoods hoofed hooker
hooped hooping hooted hooter hopes hopper hopping horde hording horsed horsey horsing hoses hosing hosted hotted
hotting houri houris housed humidify humility hummer humped humping humps hunks hurls hurting hyping ideals ignite
ignited ignites ignored imbalanced imparted impelled improve improves increase increases induce induced induces
infected infernal inflation inner inoculation inset insider installer instilled instilling insulate insulates
insulating insulator insulted intent interval intestate inventor inventors inverted irises islet isolate isolates
itched itches jerky jilts joins joist joists juiced juicer juicy jumpier jumpy keeling keels keening keens kicker
kicky killer kills kilned kilns kilted kilts kinds kinking kinks klaxon knacks knock knocker krone lacked lacks
laded lading lager lagged lamer lamest laming lanced lander lanes lapel larded larder larger largo larking laser
lashed latent latex lather latter lauded launch laving laxer laxest layer lazing lazying leaded leader leading
leafage leafed leafing leafs leafy leakier leaned leaner leaning leans leaper leaping leaps lease leased leaser
leash leasing leaved leaven leaver leeks legged lemma lends lengthy levee levees lever levered levers libel licit
licked licking licks liens lifer lifers lifter lifters lifts lightening lighting liker likes lilted lilts limes
lined linen linens liner linesman linesmen lings linkman linkmen links lisped lisps listen lithe lither litter
litters littler liver livers lives living loader loafed loafs loaned loans lobed lobes locate locates locket locos
locus locution lodes lodged lofted loges logger login loiter loiters loner longed looked looker lookout lookouts
looming looms loons looping loops loosed loosen looser looses looting loots lopes loping lorded lords loser losers
losses louse louses lousing lover loves lowed lowing lubes lubricate lubricates lucked lucking lucks lugged lurch
lured lynch maced maces machined macing macro mages maids mails maims maker makers makings males manage managed
manages maned manes manger mania manic manse mares marker market marking marred marsh marts masked masking masks
massage massed massing masted mated mater maternal mates mating matins matron matrons matte matter mattes maxes
maxing mazes meals meany measure meaty meets melts mender menus meres merged merger mergers merging merry mesas
messaged messed messing meted meteor meteors metes metro metros microbe mighty migrate migrates miked miking mildly
miler milers milfs milks mills milted milts mimed miming minded minds mined miners mines minim minims mining minis
minks mints minuet minuses minuted minuter minutest mired miring mislead misled misses mistaken misted misting
mistype mistypes misused misusing mixer moaning modal modem modes modulated moles molly momenta monitory mooed
mooing mooning moons moors moose moped mopes moping morel mores morns motel motes moths moues mourning moused mouser
mousse mousy mouth mouths mover movers movies mowed mowing muffle muffled muffles mugged mugger muggers mugging
mules murks mussed mussing muter natty naughty nearby neatly necked needled needy negatived nerds newer nicer nicety
niches nickel nicker nines noised noose nooses normalcy noshing notching notifier notifies noting nougat nowise
nuder nudes nugatory numbed oases occupier occupies odder officer offside ogled older omens onside opener opined
opining otter outdoorsy outrage outset outsider ovens overcharge overcharges overeat overhead overhear overlord
overlords oversight overtire owned owning paced paces pacing packer packet pacts paddle paddock paddocked paddocks
pails pains paint painted paints palace palate pales palled palling palls panes panning pants parade paraded parader
paraders paras parched pared pares paring parity parks parky parred parring parry parse parsed parses parsing parted
parting partly passels passers pasted pastes pasts pasty patches patted patty paused pauses peace peaky pealed
pealing peals pears pecked pecking peddle peeked peeking peeks pends penning pepped perfecta perked perks petted
petty pharaoh phrase phrased phrases phrasing picker picket picking pickled picks piddle pieced pieing pierce
pierces pigged piing piked pikes piking piles piling pilled pilling pills pimped pimping pimps pinches pinching
pines pining pinked pints piped piper pipers pipped pipping pissed pisses pistol pitied piton pitying placed placer
plaice plane planing planking planting plated platen plats platy plods plopped plumped plumping plumps plunder
plunge plunged plunges pluses pocking pocks poets pointed pointy poker pokes poled poling polled polling polys pongs
poohing pooing pooped pooping popes popper poppet pored pores poring poser poses positron posses possible posts
potion potted poufs pours pouted pouting powder powdered poxes prate prats precious preciously precises prefect
premise premised premixes prepared preps preset presumes prevent preys prices pricey prick pricked pricking pride
prided priding pried prier primacy prime primed priming prince printer prints prion priory prize probable probed
produced producer profs programmer projection projector prole proles promises proms prone properly propped props
prose provably prove proves prows pucks puddled puffer puffs pules puling pulped pulping pulsed pulsing pumas pumper
puncher punches punting pupping puree purge purging purling purls purpler pursed purser purses pursing pursue pusher
pushers pusses putted puttying quartet quartets quids quiets quilt quilts quins quint quints quips quirt quirts
quite quoited quoiting quoits quota quotes quoth rabid raced races racing racked radio rafted rafting raged rages
ragged ragging raging raiding railing raise raiser raises raked raking rally rambling rammed ramming ranee ranees
ranger rangers rangy ranked ranking ranks ranted ranting raped raping rapping rared raring rasher rasped rasping
rasps rater rates ration ratted ratter ratting rattle rattled rattler rattlers raved raving razed razing reaches
react reacted reacting readopt readying reals realty reaming reams reaping reappear reaps rearing rears reattaches
rebid rebuild rebuses recapture recaptures receive received receivers recipe recirculate recirculated recluses recon
recoveries rectal rectified rectifies rector recuperates recused recuses redactor redcap reedit reeds reedy refactor
refiled reflated refract refuges refuse refuted refutes regally regulatory rehear rehired reined reining relax
release releases remake remanded remap remoter remover removers removes renal rending rends rennin reopen repaid
repairer repay repealed repeat replace replaces replay replayed replaying requite requited requites reroute reroutes
resat resent resents resew resews reside residua resin resistant resister resisters resit resits resolutions resort
resorting restated restore restorer restores rests retch retched retching retired retort retorting retrace returnee
returner reused reuses revealed revere revered reveres reverie revering revers reverted reverting revolution rewire
rewires reword rewove rezone ribbed rices ricing ricks rides riding righto riling rimes riming ringed ringing rinse
rinses rinsing ripper rippled risen riser risers risking risks rites rives riving roach roads roams robbed rocket
rocks rodent roiled roiling roles roller romped romping romps roods roofs rooks roomy roots roses rotated rotting
rotund rouge rouse routed router routs rubber rubes rucks ruined ruing ruining ruled ruler rulers rumbaing rumpling
rumps runes runty rushy rusts rutty sable sacked sacking sacks safely sages saint saline sanding sands sapper sarge
sarong sated satin sating satrap saturate saturates saturating saving sawing scabs scads scald scaled scalp scaly
scant scarp scats scene scone scooting scorcher scorches score scotched scotching scows scrag scram scrams scrape
scrapped scratchy scream scree screeched screed screes screwy scrip scrubber scuds scuff scupper seabed sealed
seamed seams searcher searches seared seating seats sections sedated seedy seeps seined seize seizes sells semen
sending sends senior seniors senors sensory sequenced sequencer serer serge serve served servery serves serviced
servile settees settle settler settlers seventh sever sewing sexing sexting shack shacking shading shafting shagged
shagging shake shaken shaker shakers shalt shame shames shaming shape shapes shaping shared sharer shares sharing
sharking shave shaver shaves shaving shawl shays sheaved sheds sheen sheep sheer shelf shelve shewed shewing shews
shier shifty shill shills shiner shingle shinned shinning shinny shins shipped ships shire shirt shirted shirting
shits shitting shivery shoat shock shoeing shoes shone shook shoos shoot shopped shops shore shoring shorten shorter
shorting shorty shout shouted shouting shouts shoved shoving shower shown showy shredder shrew shrews shrift shrike
shtick shuck shucked shucking shucks shuns shunts shying sicked sicker sided siding sidles sifting sighed sighing
sighs signer signet silks silting simmer simmers singer singes singing singled singlet singly sinus sipped sipper
sires siring sises sites siting situated sixes sized sizes skated skeet skiff skill skimping skinning skins skipped
skips skirt skiver skying slabs slack slagged slagging slags slain slakes slaking slapping slaps slated slats slayed
slaying slays sledge sleds sleep sleeping sleet slept slice sliced slicing slick slicker slicking slicks slider
slides slight slime slims slinging slings slink slinking slipper slits slitting sliver slogged slogging slogs slops
slots slowed slows sludgy slues slugger slummer slums slung slurs smack smalls smart smarted smarting smarts smelly
smelt smelted smelting smelts smite smites smock smocked smocking smoky smooch smote smudge smuts snack snacked
snagged snagging snake snakes snaking snapper snare snared sneaked snick snicker snicking snide sniff sniffier
sniffled snifter snips snitch snitched snitches snogged snood snore snoring snort snorted snots snowed snowfall
snows snubs snuff snuffed snuffer snugger snugging snuggled snugs soaking socking socks solderer soldiered soled
solidi sooth sopping sorted sough sound souped sourced souse sowed spacers spanning spans spare spares sparing spate
spates spaying spays specifier specifies speck specks speeds speedy spell spells spewed spews spiced spicing spics
spies spiff spiffed spiky spill spine spines spiny spire spires spited spiting spitting spivs splat splayed splice
splicer splices spline splint spoken spokes spore spored sporing sport sported sports spouse spouts sprang sprayer
spreed sprig sprigs springy sprint sprints sprung spuds spurge squared squarer squeaks squeal squeeze squeezer
squeezes squire stabled stabler stably stacking staged stags stagy staid stairs stake staked staking stale staled
stales stalk stalked stampede stamper stanch stand stank staple stapled starch starched starching stared staring
stark starred starring starter startled startling starve starves state stater states stating statue statues stave
staved staves staving stayer staying stead steads steamy steed steeds steep steeped steeper steeping steeps stein
steins stems stent stepping stets stetting stews stickier stickler sticks sticky stiffed stiffer stile stilled stilt
sting stinging stinker stinky stint stints stitch stitched stitches stoats stocking stocky stoke stoked stoking
stole stolid stomped stomping stomps stoned stoner stony stood stooped stooping stoops stopper stoppled stoppling
stored stork stoups stove stowed stows strain strained strains stranding strands stratus straw stray strays
streaming streams strep strew strews stria striae stride strife striker string strings stripe stripped stripy strive
stroke stroll strolls strop stropping strops strung study stuffs stumped stung stunt sucker suckled suckling suited
suits sulked sulking sulks summed summery superb supped supple suppler supplied supplies supposes surer surfing
surged suspicions swabs swagged swagging swain swains swamped swatch swatches swats swaying sways swear swearing
sweater sweaty sweeping sweet swell sweller swells swift swigging swigs swill swilled swilling swines swing
swingeing swiped switcher switchers swore swots tabla tablas tabled tablet tablets tacks tagger takers tales talker
talks tames taming tampered tampering tamps tangs tanker tanking tanned tapes taping tapped tapping tares taring
tarns tasered tasering tasking tasks tasting taxes taxing teats teeth temperate tempo tempos tempt tempts tended
tending tented tenting tents terns terribly tester testes testis testy texted texting texts thank thanked thanking
thanks thaws thees themes therms theses thick thicket thine thingy thinning thins thirsty thole thong thorough
thrash threes throb throbs throes thumbing thumbs thump ticked ticker tickled tickling tightener tipped tires toady
toaster toasty toddy togged toggled toils token tokes toking tolls tonal tonally toner tones toots topical topically
topper toppled toppling torch torque torques torts torus touchy tough tours towed towel toying track trains trammed
trams transform transformed transforms transpose transposes trapped trapping traps trashy traversed trays treading
trees tribes trick tricked tricking trickle trickles tried trier triers trifle trikes tripe tripled triplet triplex
tripling triply tripos tripper troubled trough trowing trows truce truckled trues truing trumping trumps trunk tubas
tubed tuber tubers tucking tugged tuned tunes turds turfed turfing turfs turner turps tuxes twats tweed tweet tying
tykes udder unbend unblocked uncharged uncooked undercharge undercharges unfits ungraded unhanded unison unite
unites unity unseated untie upend upgrade upgrades usable vague vales valued valuer values valuing vantage varied
vaunt vaunts vended vends verifies versified vested vests vetted vibrated vibrato vibratos volute wader waders wafer
wafers wafted wafting wager wagers waggles wailing waited waiter waiters waiving waked waking waled waling walker
walled walling wands waned wanes wanked wanking wanks wanting warder warehoused wares warier warmed warrant warrants
washer washes wastage wasted waster wasters wasting waver wavers wedded weeded weeding weeds weeing weening weens
weeps weighted weighting weights weighty welder welkin welled welted wended wends wetter whale whams wheal whereat
whets whiled whiling whinging whited whiten whiter whitey whits wholesale wholesaled wholesales whoop whops whores
whoso wielded wiggle wiggled wiggler wigglers wight wilds wiled wiles wiling wimped wincing winder windy wined
winger winging wings winier winker winking winks winner winning winnings winos wiper wipes wiping wised wises wished
wising withing witter wived wives wiving wobbled wonted woods woofs worded wording worker world wormed worming
wouldst wowing wrapper wriggles wright writer writhe writing writs wrote wrung yarns yeahs yearn yearns yellowy
zeroed zines zoned
`;
