import { z } from 'zod'

// The page's content policy forbids code made from text; told so before any schema is made, zod does not try it.
z.config({ jitless: true })
