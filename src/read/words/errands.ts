const ways =
  "running to|run over to|going to|going over to|heading to|heading over to|headed to|headed over to|off to|over to|leaving for|left for|rolling to|driving to|on my way to|omw to|heading out to|im at|making a run to";
const stores =
  "supply house|parts house|parts store|parts counter|supply store|supply counter|supply place|supplier|suppliers|wholesaler|wholesalers|hardware store";

/** Phrases of a way to where parts are sold: who goes there is off the site, and comes back. */
export const errandWords: string = ways
  .split("|")
  .flatMap((way) =>
    stores
      .split("|")
      .flatMap((store) => [`${way} the ${store}`, `${way} ${store}`, `${way} a ${store}`]),
  )
  .concat(
    "supply run|parts run|on a supply run|on a parts run|making a supply run|making a parts run".split(
      "|",
    ),
  )
  .join("|");
