const ways =
  "running to|run over to|going to|going over to|heading to|heading over to|headed to|headed over to|off to|over to|leaving for|left for|rolling to|driving to|on my way to|omw to|heading out to|im at|making a run to";
const stores =
  "supply house|parts house|parts store|parts counter|supply store|supply counter|supply place|supplier|suppliers|wholesaler|wholesalers|hardware store";

const breaks =
  "going to lunch|going for lunch|off to lunch|out to lunch|gone to lunch|heading to lunch|headed to lunch|leaving for lunch|left for lunch|breaking for lunch|stopping for lunch|grabbing lunch|getting lunch|taking lunch|gonna grab lunch|going to grab lunch|on lunch|on lunch break|on my lunch|taking my lunch|lunch break|grabbing a bite|getting a bite|going to get a bite|grabbing a sandwich|taking a break|taking my break|on break|on my break|grabbing coffee|getting coffee|going for coffee|coffee run";

/** Phrases of a way to where parts are sold, or to a meal: who goes there is off the site, and comes back. */
export const errandWords: string = ways
  .split("|")
  .flatMap((way) =>
    stores
      .split("|")
      .flatMap((store) => [`${way} the ${store}`, `${way} ${store}`, `${way} a ${store}`]),
  )
  .concat(
    breaks.split("|"),
    "supply run|parts run|on a supply run|on a parts run|making a supply run|making a parts run".split(
      "|",
    ),
  )
  .join("|");
