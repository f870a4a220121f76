/**
 * What stands beside springs where hands, eyes or a movement are at risk. Common practice, and W. L. Goodrich, The Modern
 * Clock, 1905, pp. 277–282; W. T. Lewis, Friction, Lubrication and the Lubricants in Horology, 1896, art. 48 and 87.
 */
export const springCautions = {
  order:
    'Order what the maker specified: height, thickness, length and end. A stronger spring does not mend a tired movement.',
  lettingDown:
    'Let the mainspring down before anything is taken apart: hold the crown or key, free the click, and let it turn slowly. ' +
    'Where there is stop work, count the turns.',
  winder:
    'Put springs in and take them out with a winder of the right size and hand. By hand they are kinked or coned.',
  eyes: 'Wear eye protection whenever a spring is outside its barrel, and keep your face out of its plane. Strips have sharp edges.',
  brittle:
    'Old carbon steel is brittle and often breaks soon after it was taken out and cleaned. Do not straighten, re-bend or use ' +
    'again a strip that is cracked or set.',
  ring: 'A new spring in its ring is under load: press it straight into the barrel, right way up.',
  handling:
    'Let the spring down before opening a barrel, use a winder, protect your eyes, and follow the maker’s specification and ' +
    'your own training first.',
} as const
