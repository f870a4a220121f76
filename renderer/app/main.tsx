import './without-eval.ts'
import { QueryClient, QueryClientProvider } from '@tanstack/react-query'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { App } from './app.tsx'
import './fonts.css'
import './tokens.css'
import './base.css'
import './frame.css'
import '../components/components.css'
import '../drawings/drawings.css'
import '../pages/calibers/calibers-page.css'
import '../pages/caliber/caliber-page.css'
import '../pages/import/import-page.css'
import './print.css'

const queries = new QueryClient({
  // The library is on this machine: an answer is never stale by itself, and a failure is said at once.
  defaultOptions: {
    queries: { staleTime: 30_000, retry: false, refetchOnWindowFocus: false, networkMode: 'always' },
    mutations: { networkMode: 'always' },
  },
})

const place = document.getElementById('page')
if (place) {
  createRoot(place).render(
    <StrictMode>
      <QueryClientProvider client={queries}>
        <App />
      </QueryClientProvider>
    </StrictMode>,
  )
}
