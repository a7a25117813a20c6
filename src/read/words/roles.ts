import { role } from "../word.ts";

/** Small words and what they do. */
export const roleWords: readonly (readonly [words: string, roles: number])[] = [
  [
    "is|sat at|are|was|were|reads|reading|read|readin|redin|reedin|shows|showing|showed|says|saying|sits|sitting|measured|measures|measuring|got|getting|gets|equals|came out|comes out|comes out at|came out at|came out to|came in at|comes in at|comes to|came to|come out|have|has|had|gives|giving|be|been|being|its|thats|stands|standing|seeing|see|looks like|turned out|hit|reached|reaching|hits|gave me|gives me|moving|turning|putting out|running at|runs at|measuring out|checks|checked|tests|tested|testing|checks out at|logged|logs|im seeing|takes|took|take",
    role.is,
  ],
  ["=|:", role.is],
  [
    "on|of|from|across|at|in|against|off|through|thru|by|with|w|via|per|btwn|around|into|onto|frm|under load|over on|goes with|goes along with|out of|coming off|inside|thru|leaving",
    role.preposition,
  ],
  ["at|@", role.preposition],
  [
    "between|btwn|b w|tween|anywhere from|anywhere between|bouncing from|bouncing between|bounces between|swinging between|swings between|ranging from|ranges from|ranging between|varies from|varies between|hunting between|hunts between|hunting from",
    role.preposition | role.between,
  ],
  ["to|ta", role.preposition | role.to],
  [
    "→|up to|down to|to about|to around|to roughly|to abt|to almost|to nearly|to maybe|up into|-> |to like|all the way to|all the way down to|all the way up to",
    role.to,
  ],
  ["for", role.preposition],
  ["medium temp|med temp|medium temperature", role.article],
  ["and|&|n|plus|+|with|while|where|whereas|along with|also", role.conjunction],
  [
    "but|however|though|yet|except|xcept|cept|xcpt|anyway|so|because|cuz|since then|meanwhile|okay so",
    role.conjunction,
  ],
  [
    "then|and then|before it|settles|settled|settling|settles at|settled at|settles out|settles out at|settled out at|settles down to|drops to|dropped to|falls to|fell to|then down to|levels out at|leveled out at|then it drops to|dropping to|after that|settling at|then settles at|then drops to|then settled at|settling out at|down into",
    role.next,
  ],
  [
    "no|not|none|nothing|isnt|aint|dont|doesnt|didnt|wont|cant|couldnt|wasnt|never|without|zilch|nada|hasnt|havent|nope",
    role.not,
  ],
  ["nothing|dead|zilch|nada|none", role.zero],
  [
    "opn|opne|ol|o l|is oh well|reads oh well|reading oh well|ground oh well|o.l.|open|infinite|infinity|∞|off scale|off the scale|offscale|over range|over ranged|overrange|over limit|open line|open loop|pegged high|wide open|open circuit|open circuited|out of range|over the range|off the chart|off the meter|inf|oh el|oh l|o el|overload on the meter|max range|over scale|overscale|off the charts|above range|out of limits|infinite ohms|reads open|o.l",
    role.over,
  ],
  [
    "same|the same as|exactly the same as|ditto|likewise|identical|same thing|same number|same reading|same as|same here|same value|same story|as well|same deal|exact same|exact same as|the exact same as|the exact same|exact same thing as|exactly the same|the same|samesies|just the same|sme|dito",
    role.same,
  ],
  [
    "about|to about|to around|to roughly|to abt|to almost|to nearly|to maybe|like|call it|calling it|maybe|abt|ca|appr|approx|approximately|roughly|~|ish|bout|circa|close to|just about|almost|nearly|or so|give or take|right around|right about|somewhere around|somewhere near|in the neighborhood of|more or less|ballpark|around about|probably around|appx|aprox|roughy|near|near about|give or take a few|right at about|maybe about|something like|somewhere about|somewhere in the|pretty close to|apx|aroun|arnd|nearabout",
    role.about,
  ],
  ["around", role.about | role.preposition],
  [
    "over|above|more than|greater than|>|better than|north of|exceeds|exceeding|higher than|past|in excess of|bigger than|well over|way over|upwards of|upward of|beyond|and climbing past|up over|just over|a little over|little over|a bit over|ovr|abv|more then|greater then|better then|higher then|at more than|a hair over|a touch over",
    role.greater,
  ],
  [
    "under|below|less than|<|lower than|short of|south of|fewer than|not even|shy of|just under|well under|way under|a little under|little under|a bit under|beneath|undr|less then|lower then|a hair under|at less than|barely under|a touch under|no where near",
    role.less,
  ],
  [
    "at least|>=|≥|=>|no less than|not less than|minimum of|a minimum of|or more|or better|or higher|or above|or over|or greater|and up|not below|at minimum|atleast|no lower than",
    role.atLeast,
  ],
  [
    "at most|<=|≤|no more than|not more than|maximum of|a maximum of|or less|or lower|or under|or below|not over|not above|tops|no higher than|atmost|not exceeding",
    role.atMost,
  ],
  ["or|either|or was it|or is it|or maybe|or might be|possibly", role.or],
  [
    "ground|gnd|grnd|grd|earth|pe|chassis|case ground|the frame|frame|grond|grund|the ground|ground lug|the shell ground|earthed|ear th|masse",
    role.ground,
  ],
  [
    "the|a|an|my|this|that|these|those|our|his|her|her own|it|that|she|he|they|i|im|we|you|ive|were|theyre|shes|hes|theres|weve",
    role.article,
  ],
  [
    "all three|all 3|all|every|all of them|all legs|all phases|both|all four|all 4|all six|all 6|all two|all 2|all five|all 5|three of them|all 3 of them|all three of them|all of em|both of them|all the way around|all round|all around|across the board|all across|the three|on all three|all 3 legs",
    role.all,
  ],
  [
    "each|apiece|ea|each one|each of them|every one|a piece|per leg|each leg|each phase|each pair|per phase|each side|each way",
    role.each,
  ],
  [
    "now|this am|this a m|this pm|this evening|today|currently|presently|right now|at the moment|this time|this visit|this morning|this morn|after that its|as of now|at present|nw|tonight|this afternoon|these days|still now|nowadays",
    role.now,
  ],
  [
    "when we installed it|when it was installed|when installed|at install|when we put it in|when it went in|when it was put in|back in january|back in february|back in march|back in april|back in may|back in june|back in july|back in august|back in september|back in october|back in november|back in december|spring visit|spring pm|spring startup|spring start up|spring service|spring checkup|spring check|spring tune up|spring inspection|fall visit|fall pm|fall startup|fall start up|fall service|fall checkup|fall check|fall tune up|fall inspection|summer visit|summer pm|summer startup|summer start up|summer service|summer checkup|summer check|summer tune up|summer inspection|winter visit|winter pm|winter startup|winter start up|winter service|winter checkup|winter check|winter tune up|winter inspection|the spring visit|the spring pm|the spring startup|the spring start up|the spring service|the spring checkup|the spring check|the spring tune up|the spring inspection|the fall visit|the fall pm|the fall startup|the fall start up|the fall service|the fall checkup|the fall check|the fall tune up|the fall inspection|the summer visit|the summer pm|the summer startup|the summer start up|the summer service|the summer checkup|the summer check|the summer tune up|the summer inspection|the winter visit|the winter pm|the winter startup|the winter start up|the winter service|the winter checkup|the winter check|the winter tune up|the winter inspection|on the spring visit|on the spring pm|on the spring startup|on the spring start up|on the spring service|on the spring checkup|on the spring check|on the spring tune up|on the spring inspection|on the fall visit|on the fall pm|on the fall startup|on the fall start up|on the fall service|on the fall checkup|on the fall check|on the fall tune up|on the fall inspection|on the summer visit|on the summer pm|on the summer startup|on the summer start up|on the summer service|on the summer checkup|on the summer check|on the summer tune up|on the summer inspection|on the winter visit|on the winter pm|on the winter startup|on the winter start up|on the winter service|on the winter checkup|on the winter check|on the winter tune up|on the winter inspection|at the spring visit|at the spring pm|at the spring startup|at the spring start up|at the spring service|at the spring checkup|at the spring check|at the spring tune up|at the spring inspection|at the fall visit|at the fall pm|at the fall startup|at the fall start up|at the fall service|at the fall checkup|at the fall check|at the fall tune up|at the fall inspection|at the summer visit|at the summer pm|at the summer startup|at the summer start up|at the summer service|at the summer checkup|at the summer check|at the summer tune up|at the summer inspection|at the winter visit|at the winter pm|at the winter startup|at the winter start up|at the winter service|at the winter checkup|at the winter check|at the winter tune up|at the winter inspection|last spring visit|last spring pm|last spring startup|last spring start up|last spring service|last spring checkup|last spring check|last spring tune up|last spring inspection|last fall visit|last fall pm|last fall startup|last fall start up|last fall service|last fall checkup|last fall check|last fall tune up|last fall inspection|last summer visit|last summer pm|last summer startup|last summer start up|last summer service|last summer checkup|last summer check|last summer tune up|last summer inspection|last winter visit|last winter pm|last winter startup|last winter start up|last winter service|last winter checkup|last winter check|last winter tune up|last winter inspection|on the last visit|at the last visit|last seasons|when we started it up|at the last service|before the repair|earlier visit|previous service|last go round|first time out|last time out|two weeks ago|three weeks ago|on monday|on tuesday|last monday|last tuesday|last friday|last thursday|last wednesday|previous log|log sheet says|in the log from|from the log|logs show|log shows|the log says|log said|logged last|in january|in february|in march|in april|in may|in june|in july|in august|in september|in october|in november|in december|in jan|in feb|in mar|in apr|in jun|in jul|in aug|in sept|in sep|in oct|in nov|in dec|last aug|last jan|last feb|last march|last april|last may|last june|last august|last september|last october|last november|last december|last nov|last dec|last sept|last apr|in the spring|in the fall|in spring|in fall|in summer|in winter|in the summer|in the winter|back in spring|back in may|back in july|last year|last month|last week|last visit|last time|last spring|last summer|last fall|last winter|last season|last january|yesterday|previously|previous|last oct|last july|before the storm|a year ago|a month ago|a week ago|months ago|years ago|year ago|month ago|weeks ago|week ago|back then|used to be|used to read|used to run|used to pull|earlier this year|last quarter|originally|at startup last year|on the last pm|last pm|at last pm|last service|at commissioning|at start up last year|on the old sheet|old reading|old readings|last readings|last reading|last log|startup sheet|on startup day|when new|when it was new|in the log|prior visit|prior|last trip|last yr|last mo|last wk|yr ago|mo ago|yrs ago|the old number|old number|other day|the other day|yest|day before|last night|last evening|years log|last years log|last inspection|last check|history shows|in the history|last report|on the last report|previous visit|previous reading|it used to be|from last year|since last year|last season's|the log from|the last log|past visit|last call|on the last call|first visit|half a year ago|ages ago|start of the season|start of season|the startup sheet|on startup|initial startup|original startup|when we started it up|years back|months back|weeks back|a year back|a month back|a while back|while back|a while ago|while ago|baseline|last autumn|day one|the day we started it|last summers|last springs|last years|last months|last weeks|last visits",
    role.earlier,
  ],
  [
    "down to|dwn to|dn to|climbed|climbing|climbs|climb|rose|rises|rising|rise|dropped|drops to|dropping|drop to|falling|fell|falls|fall|went|goes|going up|went up|came down|coming down|crept|creeping|creeps|started|starts|started out|starts off|starts out|started off|started at|start at|begins|began|bled|bleed|bleeds|bleeding|bled down|decayed|decaying|decays|ramped|ramps|ramping|ramped up|ramp up|ramps up|pulled down|pulls down|sank|sinks|sinking|slid|sliding|jumped|jumps|went from|rose from|dropped from|fell from|climbed from|up from|down from|came up from|came down from|levels out|leveled out|levels off|leveled off|drifted|drifting|drifts|improved|grew|growing|worked its way|moved|settles|stepped|gained|lost|tapering|tapered|trended|trending|kept falling|kept climbing|keeps climbing|keeps falling|keeps dropping|keeps rising|swung|crawled|inched|ended up|ends up|ended at|wound up|winds up|got up to|gets up to|came up to|comes up to|came back to|come up to|recovered to|opened at|finished at|topped out at|topped out|peaked out at|tanked|raised|shot up|spiked|fade|fades|faded|fading|slipped|slipping|from|frm|came up slowly|came up|came back up|came back up to|came back down|came back down to|comes up|leveled|leveled at|levels at|leveled off at|levels off at",
    role.change,
  ],
  [
    "going to|gonna|will|ill|planning|plan|plan to|need to|needs to|want to|wanna|lets|let me|about to|should i|do i|do we have|do you have|do u have|do you want|can i|heading to|fixing to|have to|gotta|tomorrow|tmrw|next week|later today|next visit|thinking|expect to|well be|ill be|supposed to get|might|if we|if i|try to|trying to|shall|intend|would need|ready to|prepare to|hoping to|hope to|getting ready to|plan on|planning on|planning to|going in to|about ready to|gna|might have to|may need|will need|hafta|want me to|you want me to|should we",
    role.plan,
  ],
  [
    "like it should|as it should|like they should|as they should|like she should|the way it should|so call it|per chart|per the chart|ok per chart|only|just|still|actually|really|like|even|exactly|right|dead on|flat|straight|sharp|solid|steady|on the nose|all|way|down|up|around there|barely|already|pretty|very|so|kinda|kind|sort|well|good|bad|nice|fine|okay|ok|yeah|yep|yup|uh|um|er|ah|hmm|lol|haha|man|boy|hey|well|there|here|out|about there|again|finally|super|real|holding|holds|hold|held|steadily|consistently|constantly|stable|rock steady|even|ohm scale|ohms scale|meg scale|on the ohm scale|scale|ohms setting|on the ohms setting|ohm setting",
    role.only,
  ],
  [
    "wanted to say|wanted to write|wanted to type|meant to say|meant to write|meant to type|meant to put|wanted to put|that aint right its|that aint right it is|that aint right it was|that aint correct its|that aint correct it is|that aint correct it was|that aint it its|that aint it it is|that aint it it was|that isnt right its|that isnt right it is|that isnt right it was|that isnt correct its|that isnt correct it is|that isnt correct it was|that isnt it its|that isnt it it is|that isnt it it was|thats not right its|thats not right it is|thats not right it was|thats not correct its|thats not correct it is|thats not correct it was|thats not it its|thats not it it is|thats not it it was|that wasnt right its|that wasnt right it is|that wasnt right it was|that wasnt correct its|that wasnt correct it is|that wasnt correct it was|that wasnt it its|that wasnt it it is|that wasnt it it was|this aint right its|this aint right it is|this aint right it was|this aint correct its|this aint correct it is|this aint correct it was|this aint it its|this aint it it is|this aint it it was|this isnt right its|this isnt right it is|this isnt right it was|this isnt correct its|this isnt correct it is|this isnt correct it was|this isnt it its|this isnt it it is|this isnt it it was|no wait|wait no|neg that|negative that|negatory|belay that|cancel that its|scratch|sorry|i mean|correction|make that|make it|meant|should say|typo|my bad|oops|whoops|woops|actually no|hang on|hold on|wait|nope|rather|no sorry|sorry no|er no|no actually|strike|change that to|change it to|not|no make it|no make that|or rather|excuse me|let me correct|correcting|fix that|fix|i said|that was wrong|wrong|misread|mis read|mistyped|fat fingered|fat finger|fat fingers|jk|sry|scuse me|that should be|that should read|should have been|was supposed to be|let me fix|lemme fix|amend|wait actually|no thats|oh sorry|oh no sorry|ah sorry|ah no sorry|oh no wait|oh wait|disregard|no it was|no its|no that was|no it is|no im sorry|nah|no wait make that|actually its|i meant|transposed|flip flopped|switched the digits|swapped the digits|had it backwards|dyslexic|mixed up|mistake|my mistake|that was a typo|should of said",
    role.correct,
  ],
  ["b4|bfr|bfore", 0],
  ["after|aftr|afterwards|later|past|into|in|since|at the|mark|following|by", role.after],
];
