// @vitest-environment happy-dom
import 'fake-indexeddb/auto';
import { cleanup, fireEvent, render, screen, waitFor } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { boxById, changeBox } from '../../src/app/boxes.ts';
import { givenFor } from '../../src/app/calculated.ts';
import { calculate } from '../../src/domain/box/calculate.ts';
import { depthReached } from '../../src/domain/box/cuts.ts';
import { nextSeq } from '../../src/domain/box/sequence.ts';
import TenonStage from '../../src/ui/bench/tenon/stage.tsx';
import { useLive } from '../../src/ui/parts/use-live.ts';
import { boxOf, choose, freshLog, length, newBoxOf, press, seen, type } from './plan-shop.ts';

const Bench = ({ id }: { id: string }) => {
  const onHand = useLive(boxById, ['box'], id).value;
  return onHand ? <TenonStage onHand={onHand} runs={new Map()} /> : null;
};
let id = '';
let wanted = 0;

beforeEach(async () => {
  await freshLog('mm');
  id = (await newBoxOf()).id;
  await changeBox(id, (box) => ({
    ...box,
    bore: [{ id: 'b', seq: 1, where: 'mouth', along: length(50), across: null, overCrests: false }],
  }));
  const { box } = await boxOf(id);
  const calculated = calculate(box, await givenFor(box));
  wanted = calculated.ok ? calculated.value.target.tenon : 0;
  render(<Bench id={id} />);
  await seen('Turn the tenon to');
});
afterEach(cleanup);

const read = async (diameter: number) => {
  await type('Diameter of the tenon', diameter.toFixed(3));
  await press('Save');
  await seen(new RegExp(`^(At the end|By the shoulder) ${diameter.toFixed(3)} mm`));
};

describe('the tenon', () => {
  it('on size it says so, and that it will go on easily', async () => {
    await read(wanted);
    await seen('On size');
    await seen(/it goes on easily\./);
    expect(await screen.findByRole('img', { name: /^Section of the joint to be cut/ })).toBeTruthy();
    expect(screen.getByRole('link', { name: 'To the set-up' }).getAttribute('href')).toBe(
      '#/bench/set-up-tenon',
    );
  });

  it('over size: how much to take off, the fit as it is, or how much deeper', async () => {
    await read(wanted + 0.28);
    await seen('Take off');
    expect(document.querySelector('.number')?.textContent).toBe('0.28 mm');
    await seen(/^stiff\. /);
    await seen(/Cut its thread to [\d.]+.mm instead of/);
  });

  it('far over size it will not go on at all, and no depth is offered that leaves too little crest', async () => {
    await read(wanted + 0.72);
    await seen(/it will not go on\. The flanks meet 0\.3\d.mm too soon/);
    await seen(/^No depth makes up for it\. The tenon’s crests would be left 0\.0\d.mm wide: under 0\.15.mm/);
    expect(screen.queryByText('Or leave it')).toBeNull();
    const act = screen.getByRole('button', { name: /^Turn it to [\d.]+.mm, then measure$/ });
    expect(act.className).toBe('main');
    fireEvent.click(act);
    expect(document.activeElement).toBe(screen.getByRole('textbox', { name: 'Diameter of the tenon' }));
    expect(screen.getByRole('link', { name: 'Cut it as it is: to the set-up' }).className).toBe('act');
  });

  it('far under size: how little would engage, and the big button is a new tenon', async () => {
    await read(wanted - 1.9);
    await seen('Under size by');
    await seen(/^Only 1\d % of the thread would engage: under 50 % wood strips easily\.$/);
    expect(screen.queryByText('Or leave it')).toBeNull();
    const act = screen.getByRole('button', { name: /^Turn a new tenon to [\d.]+.mm$/ });
    expect(act.className).toBe('main');
    expect(screen.queryByRole('link', { name: 'To the set-up' })).toBeNull();
  });

  it('off by no more than a caliper can tell beyond the band, it is on size and says so', async () => {
    await read(wanted + 0.1);
    await seen('On size');
    await seen(/0\.10.mm off, within caliper error/);
  });

  it('a fit at the edge of easy is not judged finer than the caliper', async () => {
    await read(wanted + 0.2);
    await seen(/^(easy or stiff, within caliper error)\./);
  });

  it('a taper that the crests cannot take is not on size: which end, and how much comes off', async () => {
    await read(wanted - 0.6);
    await choose('By the shoulder');
    await read(wanted + 0.6);
    await seen(/^The crests cannot take this taper: take 1\.20.mm off by the shoulder\.$/);
    expect(screen.queryByText('On size')).toBeNull();
    expect(screen.getByRole('button', { name: 'Turn it parallel, then measure' }).className).toBe('main');
  });

  const cutRecess = async (depth: number) => {
    const cut = { part: 'recess', runId: null, at: 1, correction: false } as const;
    await changeBox(id, (box) => ({
      ...box,
      cuts: [0.6 * depth, depth].map((each, i) => ({
        ...cut,
        id: `r${i}`,
        depth: length(each),
        seq: nextSeq(box) + i,
      })),
    }));
  };

  it('a recess cut too deep is named before the tenon is turned and after, with what mends it', async () => {
    await cutRecess(2.27);
    await seen(
      /^The recess was cut 2\.27.mm deep, not 1\.6\d.mm\. The recess’s crests would stand 0\.2\d.mm deep/,
    );
    const { box } = await boxOf(id);
    const calculated = calculate(box, await givenFor(box));
    await read(calculated.ok ? calculated.value.target.tenon : 0);
    await seen(/The recess was cut 2\.27.mm deep.*Bore its crests out to 50\.\d\d.mm first\./);
    expect(screen.queryByText('On size')).toBeNull();
    expect(screen.getByRole('link', { name: 'Mend the recess' }).className).toBe('act main');
  });

  it('a recess cut too shallow takes a bigger tenon cut deeper, or is named when no tenon will do', async () => {
    await cutRecess(1.1);
    const sizes = async () => {
      const { box } = await boxOf(id);
      const calculated = calculate(box, await givenFor(box));
      if (!calculated.ok) throw new Error('no sizes');
      return calculated.value;
    };
    expect((await sizes()).limits).toEqual([]);
    expect((await sizes()).pair.tenon.depth).toBeGreaterThan((await sizes()).plan.sizes.depth + 0.1);
    await cutRecess(0.7);
    await seen(/^The recess was cut 0\.70.mm deep, not 1\.6\d.mm\. Only \d\d % of the thread would engage/);
    await seen(/Cut the recess deeper first\.$/);
  });

  it('under size: by how much, the slack, and a shallower cut', async () => {
    await read(wanted - 0.4);
    await seen('Under size by');
    await seen(/^slack\. /);
    await seen(/Cut its thread only to/);
  });

  it('no bigger than the recess: no thread, and no way out is offered', async () => {
    await read(49);
    await seen(/^No thread would hold/);
    expect(screen.queryByText('Or leave it')).toBeNull();
  });

  it('turned down and measured again, the newest reading counts and the first is struck through', async () => {
    await read(wanted + 0.3);
    await seen('Take off');
    await read(wanted);
    await seen('On size');
    expect(screen.getByText('measured again since')).toBeTruthy();
    expect((await boxOf(id)).box.tenon).toHaveLength(2);
  });

  it('read plain after its passes it was turned again: that is said, and its passes start over', async () => {
    await read(wanted);
    await seen('On size');
    const pass = {
      id: 'p',
      part: 'tenon',
      runId: null,
      at: 1,
      depth: length(1.6),
      correction: false,
    } as const;
    await changeBox(id, (box) => ({ ...box, cuts: [{ ...pass, seq: nextSeq(box) }] }));
    await seen(/was turned again: its set-up and its passes start over/);
    await choose('Over finished crests', 'checkbox');
    await waitFor(() => expect(screen.queryByText(/was turned again/)).toBeNull());
    await choose('Over finished crests', 'checkbox');
    expect(depthReached((await boxOf(id)).box, 'tenon')?.mm).toBe(1.6);
    await read(wanted - 0.2);
    await seen('measured again since');
    expect(depthReached((await boxOf(id)).box, 'tenon')).toBeNull();
  });

  it('end and shoulder tell the taper', async () => {
    await read(wanted);
    await seen('On size');
    await choose('By the shoulder');
    await read(wanted + 0.1);
    await seen(/0\.10.mm bigger by the shoulder/);
  });
});
