import { proofs } from '../proofs/index.ts'

const titles: ReadonlyMap<string, string> = new Map(proofs.map(({ id, title }) => [id, title]))

/**
 * The statement of a proof as a heading; a proof of a newer version is called by its id.
 * @example
 * proofTitle('jewels-add-up') // 'Jewels add up'
 */
export const proofTitle = (id: string): string => titles.get(id) ?? id
