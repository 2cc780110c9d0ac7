/** What the exit status of the command says; scripts rely on these numbers. */
export const exit = {
  fine: 0,
  targetMissed: 1,
  answerNotRight: 1,
  usage: 64,
  badData: 65,
  noInput: 66,
  bug: 70,
  cannotWrite: 74,
  interrupted: 130,
} as const;

export type ExitCode = (typeof exit)[keyof typeof exit];

/** The meaning of each exit status, in the words of the help. */
export const exitMeanings: readonly (readonly [ExitCode, string])[] = [
  [exit.fine, 'fine'],
  [exit.targetMissed, 'computed, but a target of the design is not met, or an answer is not right'],
  [exit.usage, 'wrong usage'],
  [exit.badData, 'bad input data'],
  [exit.noInput, 'no such input, or it cannot be read'],
  [exit.bug, 'a fault of selvage itself'],
  [exit.cannotWrite, 'the output cannot be written'],
  [exit.interrupted, 'interrupted'],
];
