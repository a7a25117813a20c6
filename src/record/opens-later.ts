/** A job that is opened for another day or another hour, by its words. */
export const opensLater =
  /\b(?:later|tomorrow|tonight|next (?:week|month|visit|time)|(?:mon|tues|wednes|thurs|fri|satur|sun)day|after(?: lunch| this| i| we)?|when(?:ever)?|once|afternoon|sometime|this week|schedule|follow[- ]?up|come back|return)\b/i;
