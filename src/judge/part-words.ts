/** Parts that the liquid line goes through. */
export const partWords =
  /drier|dryer|solenoid|strainer|(?<!on the |the )screen(?! wall| door|s? (?:says|reads|shows))|king valve|service valve|sight ?glass|filter.?drier|kink/;
