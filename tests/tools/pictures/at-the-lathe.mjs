/** What the one heading of the screen says. */
const headingNow = (phone) => phone.page.getByRole('heading', { level: 1 }).first().textContent();

/** Taps this and waits until another step, or the end, is on screen. */
export const tapToNextStep = async (phone, name) => {
  const before = await headingNow(phone);
  await phone.tap(name);
  await phone.page.waitForFunction((before) => document.querySelector('h1')?.textContent !== before, before);
};

/** Whether the set-up has come to its end. */
export const isReady = (phone) => phone.shows('Set. Nothing more to check.', 'heading');

const SEVERAL = /^\d+ steps done$/;

/** Passes what is left of the set-up in hand, as few taps as it takes. */
export const passTheRest = async (phone) => {
  while (!(await isReady(phone))) await tapToNextStep(phone, (await phone.shows(SEVERAL)) ? SEVERAL : 'Pass');
};

/** Plans a box, from the Bench with no box on it. */
export const planBox = async (phone, { opening = '2', wood = 'Boxwood' } = {}) => {
  await phone.go('bench', 'new');
  await phone.fill('Opening', opening);
  await phone.fill('Wood', wood);
  await phone.tap('Plan it');
  await phone.sees('Bored? Measure it', 'link');
};

/** Reads the bore of the box on the Bench. */
export const measureBore = async (phone, along) => {
  await phone.go('bench', 'bore');
  await phone.fill('Along the rings', along);
  await phone.tap('Save');
  await phone.sees('To the set-up', 'link');
};

/** Sets one piece up and cuts it in two passes. */
export const setUpAndCut = async (phone, part) => {
  await phone.go('bench', `set-up-${part}`);
  await phone.tap('Start the set-up');
  await phone.sees('Pass', 'button');
  await passTheRest(phone);
  await phone.tap('To the cut', 'link');
  await phone.tap('Cutter stopped: pass 1 cut');
  await phone.tap('Cutter stopped: pass 2 cut');
  await phone.rest();
};
