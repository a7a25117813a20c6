/** "84 A on two legs and nothing on the third": the motor hums on two lines. */
export const deadLeg =
  /\b\d{1,3}(?:\.\d)? ?(?:a|amps?)?\b.{0,8}\bon (?:two|both|the other two|l ?[123] and l ?[123]|[abc] and [abc])\b.{0,20}\b(?:nothing|none|zero|0(?:\.\d)?|no (?:amps|current))\b.{0,10}\b(?:on|in|through) (?:the )?(?:third|other|last|l ?[123]|[abc]|leg|phase)\b/;
