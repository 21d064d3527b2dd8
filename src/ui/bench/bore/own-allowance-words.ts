export const ownAllowanceWords = {
  mine: (tenon: string, clearance: string, low: string, high: string, joints: number) =>
    `Your own log speaks for ${tenon}: ${clearance} of clearance (${low} to ${high}, 8 times in 10; ${joints} ${joints === 1 ? 'joint' : 'joints'}).`,
} as const;
