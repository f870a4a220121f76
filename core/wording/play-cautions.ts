/** What stands beside the trying of play, where a person or a movement can come to harm. Common practice. */
export const playCautions = {
  letDown:
    'Let the mainspring down before lever or bridge comes off: a train let go under power breaks pivots, and a mainspring let ' +
    'go can hurt. That of a clock is far stronger.',
  balance:
    'Try the balance and the lever with the lightest touch, by arm or arbor: never push with force. Their pivots are as thin as ' +
    'a hair, and hole and cap jewels crack.',
  gauges: 'Do not force a gauge or a broach into a jewel hole, and keep hard steel off a polished pivot.',
  first: 'The maker’s specification, the rules of your workshop and your own training come first.',
} as const
