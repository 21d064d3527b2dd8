/** Words of the offer to repeat the last box. */
export const repeatWords = {
  lastWas: (number: number, name: string) => `The last was box ${number}${name ? `, ${name}` : ''}.`,
  likeTheLast: 'Like the last one',
} as const;
