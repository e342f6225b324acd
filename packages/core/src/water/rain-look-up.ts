/** Where to find the rain of a place, which must not be made up (common practice for yard drains). */
export const rainLookUp =
  'Rain to carry is not known. Look up the intensity of your place in the public precipitation-frequency tables of ' +
  'the national weather service: for yard drains the 5-minute rain of once in 10 years is a usual choice; local ' +
  'code may ask for another.';
