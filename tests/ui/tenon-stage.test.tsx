// @vitest-environment happy-dom
import 'fake-indexeddb/auto';
import { cleanup, render, screen, waitFor } from '@testing-library/preact';
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
    await read(wanted + 0.3);
    await seen('Take off');
    expect(document.querySelector('.number')?.textContent).toBe('0.30 mm');
    await seen(/^stiff\. /);
    await seen(/Cut its thread to [\d.]+.mm instead of/);
  });

  it('far over size it will not go on at all', async () => {
    await read(wanted + 0.6);
    await seen(/it will not go on\. The flanks meet 0\.2\d.mm too soon/);
  });

  it('under size: by how much, the slack, and a shallower cut', async () => {
    await read(wanted - 0.4);
    await seen('Under size by');
    await seen(/^slack\. /);
    await seen(/Cut its thread only to/);
  });

  it('no bigger than the recess: no thread, and no way out is offered', async () => {
    await read(49);
    await seen(/no thread would hold/);
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
