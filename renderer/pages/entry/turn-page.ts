/** The page before or after; one that is no plain number, like 44a or xii, is left to the hand, and so is the first. */
export const turnPage = (page: string, by: 1 | -1): string => {
  const number = page.trim()
  if (!/^\d{1,5}$/.test(number)) return page
  const turned = Number(number) + by
  return turned < 1 ? page : String(turned)
}
