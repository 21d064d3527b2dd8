export const jointLinkWords = { joint: 'See the joint', card: 'Job card, to print' } as const;
