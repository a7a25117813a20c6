/** Words that statements are made of: each row is one sign, the rules look for its name. */
export const signWords: readonly (readonly [words: string, sign: string])[] = [
  // status
  [
    "omw|otw|on my way|on the way|onmyway|en route|enroute|heading over|heading to|heading out to|headed to|headed over|heading for|headed for|rolling|rolling to|on the road|driving over|driving to|eta|im about|be there in|be there at|be there|be there around|should be there|will be there|heading back to|headed back to|going over to|swinging by|minutes out|minutes away|min out|min away|mins out|mins away|minute out|on route|leaving the shop|leaving shop|left the shop|leaving for|headed out to|heading out|heading now|headed your way|headed that way|heading that way|oming|omw to|rolling out|rolling now|on our way|getting back on the road",
    "on_the_way",
  ],
  [
    "on site|onsite|on-site|just pulled up|pulled up|pulled in|pulling in|pulling up|arrived|arriving|got here|im here|just got here|here now|here at|im on site|made it|just got through the gate|got through the gate|at the site|on location|just arrived|checked in|checking in|at the job|signed in|just showed up at|on the roof now|just got to|got to the|showed up at|rolled up|just rolled up|just parked|on property|were here|walked in|walking in|weve arrived|made it to|landed at|just landed|on sight|back on site|got on site|im on the roof|just walked in|got in at|here since|at the customer|got to|reporting on site",
    "on_site",
  ],
  [
    "left site|left the site|leaving site|leaving the site|leaving the job|took off from|took off|got out|got out of|got out of there|heading home|headed home|off site|offsite|out of here|outta here|leaving now|leaving|just left|left at|left the job|clear of|clearing the site|clearing out|rolling off|locked up and gone|pulling out|pulled out of|cleared out|gone for the day|heading back to the shop|headed back to the shop|headed out|i left|ive left|clocked out|off the roof|signing out|signed out|im out|were out|im gone|im leaving|packing up and leaving|out of there|left there|head out|rolling out of here|pulled off site|pulling off|bailed|gone by|off the job|off the site|left around|left about|headed to lunch|heading to lunch|walked off|out the door|out the gate|drove off|pulled away",
    "left_site",
  ],
  [
    "waiting for parts|waiting on parts|waiting on a part|waiting for a part|waiting on the part|waiting for the part|wait for parts|parts on order|waiting on part|need to wait for parts|on hold for parts|pending parts|waiting on the board|waiting on a board|waiting on a compressor|waiting on the compressor|awaiting parts|held for parts|parts hold|part is on order|waiting for a compressor|waiting on a motor|on hold till the part|waiting on delivery|parts are on order|waiting on the motor|down waiting on|down until the part|wait on parts|waiting on|waiting for|still waiting on|still waiting for",
    "waiting_for_parts",
  ],
  [
    "no access|cant get in|couldnt get in|locked gate|no one here to let|nobody here to let|no one to let|gate is chained|nobody home|cant get access|no one home|wont let me in|locked out of the building|no key|nobody answered|no answer at the door|couldnt get access|nobody to let me in|place is locked up|building is locked|doors are locked|no one answering|refused access|wouldnt let me in|cant access|could not get in|no entry|no escort|nobody answering|site is closed|they wont let me|cant get on the roof|no roof access|cannot get in|not able to get in|nobody on site|no one on site|nobody around to let|no one there|nobody there to open|unable to access|unable to get in|denied access|couldnt get on the roof|nobody here|no one here|gate chained|gate locked|gates locked|gate was locked|gate was chained|nobodys here|noones here",
    "no_access",
  ],
  [
    "done|finished|finished up|wrapped up|all done|complete|completed|job complete|jobs done|all set|buttoned up|wrapping up|job done|thats a wrap|all buttoned up|finished here|finishing up|finished at|knocked out|job finished|jobs finished|closed out|call complete|good to go|im done|were done|packed up|all wrapped up|fixed and running|calling it done|call done|wrapped it up|finshed|call is complete|job is complete|finito|call closed|done here|done at|done deal|calling it",
    "done",
  ],
  ["ago", "ago"],
  ["here", "here"],
  // undo
  [
    "undo|scratch that|scratch that last|delete that|strike that|never mind|nevermind|disregard|disregard that|ignore that|scratch the last|take that back|take back|take that out|remove that|cancel that|forget that|scratch last|delete last|remove last|undo that|wipe that|erase that|scrap that|kill that last|take that one out|take that last|throw that out|toss that|delete the last|drop that|drop the last|back that out|scratch it|take the last|void that|remove the last|cancel the last|forget the last|nix that|ignore the last|ignore my last|strike the last|dont log that|dont record that|scratch all that|pull that last|lose that last|undo last|strike last|delete my last|remove my last|scratch my last|cancel last|erase the last|wipe the last|take it back|take it out|dump that last|get rid of that",
    "undo",
  ],
];
