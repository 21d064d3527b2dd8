/** Longer than a browser takes from the lifting of a finger to the tap it makes of it. */
const LIFTED_MS = 50;

type On = { readonly currentTarget: Element };

const lift = ({ currentTarget }: On): void => {
  setTimeout(() => currentTarget.removeAttribute('data-touched'), LIFTED_MS);
};

/** For a button that looks pressed as soon as a finger is on it: the frame that follows its tap then has nothing new to draw. */
export const underFinger = {
  onPointerDown: ({ currentTarget }: On): void => currentTarget.setAttribute('data-touched', ''),
  onPointerUp: lift,
  onPointerCancel: lift,
  onPointerLeave: lift,
};
