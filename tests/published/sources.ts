/*
 * The works that the checks cite. Grades: A, the text was read and the figure computed again; B, read in an excerpt or
 * at second hand; C, from memory; D, constructed or derived: certain arithmetic with nothing to cite.
 * For mainsprings: P, published and read; P2, published but read at second hand; M, from memory, not checked; D, derived.
 */
export const derham = 'W. Derham, The Artificial Clock-maker, 1696'
export const encyclopaedia1810 = 'Encyclopaedia Britannica, 4th ed., 1810'
export const encyclopaedia1911 = 'Encyclopaedia Britannica, 11th ed., vol. 6, “Clock”'
export const goodrich = 'W. L. Goodrich, The Modern Clock, 1905'
export const playtner = 'H. R. Playtner, An Analysis of the Lever Escapement, 1910'
export const beckett = 'E. Beckett, A Rudimentary Treatise on Clocks, Watches, and Bells, 8th ed., 1903'
export const cunynghame = 'H. H. Cunynghame, Time and Clocks, 1906'
export const dietzschold = 'C. Dietzschold, Die Turmuhren (year from memory, 1894)'
export const kleinlein = 'W. J. Kleinlein, Rules and Practice for Adjusting Watches, 1920'
