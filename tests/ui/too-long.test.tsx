// @vitest-environment happy-dom
import 'fake-indexeddb/auto';
import { cleanup, fireEvent, render, screen, waitFor } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { allBoxes } from '../../src/app/boxes.ts';
import { failures } from '../../src/app/failure.ts';
import { keep, listBodies } from '../../src/app/keep.ts';
import { copyProcedure } from '../../src/app/procedures.ts';
import { DEFAULT_PROCEDURES } from '../../src/domain/setup/default-procedures.ts';
import CloseStage from '../../src/ui/bench/close/stage.tsx';
import NewBox from '../../src/ui/bench/plan/new-box.tsx';
import Procedures from '../../src/ui/shop/procedures/procedures.tsx';
import RigPlace from '../../src/ui/shop/rig/rig.tsx';
import { boxOf, newBox, show } from './cut-box-on-bench.tsx';
import { freshLog } from './plan-shop.ts';

afterEach(cleanup);

const type = async (label: string, text: string) => {
  const field = (await screen.findByLabelText(label)) as HTMLInputElement;
  fireEvent.input(field, { target: { value: text } });
  return field;
};
const press = async (name: string | RegExp) => fireEvent.click(await screen.findByRole('button', { name }));
const refusal = async () => (await screen.findByRole('alert')).textContent;

describe('what is typed longer than a log can hold is refused beside its field, stays, and is not saved', () => {
  test('the note of a close', async () => {
    const id = await newBox();
    await show(id, CloseStage);
    const text = 'x'.repeat(20_001);
    const field = await type('Note', text);
    await press('Keep it: close');
    expect(await refusal()).toBe('Note: 20001 characters is too long. It can be 20000 at most.');
    expect(field.value).toBe(text);
    expect((await boxOf(id)).closing).toBeNull();
    await type('Note', 'x'.repeat(20_000));
    await press('Keep it: close');
    await waitFor(async () => expect((await boxOf(id)).closing?.note).toHaveLength(20_000));
  });

  describe('a new box', () => {
    beforeEach(async () => {
      await freshLog('in');
      render(<NewBox />);
      await type('Opening', '2');
      await type('Wood', 'Black cherry');
    });

    test.each([
      ['Name', 501, 500],
      ['Wood', 201, 200],
    ])('%s', async (label, typed, most) => {
      const field = await type(label, 'x'.repeat(typed));
      await press('Plan it');
      expect(await refusal()).toBe(`${label}: ${typed} characters is too long. It can be ${most} at most.`);
      expect(field.value).toHaveLength(typed);
      expect(await allBoxes()).toEqual([]);
    });

    test('a length', async () => {
      await type('Opening', `2.${'0'.repeat(120)}`);
      await press('Plan it');
      expect(await refusal()).toBe('Opening: 125 characters is too long. It can be 100 at most.');
      expect(await allBoxes()).toEqual([]);
    });
  });

  test('the name of a rig: not cut off', async () => {
    await freshLog('in');
    render(<RigPlace rest={['name']} />);
    await type('Name', 'x'.repeat(501));
    await press('Keep it');
    expect(await refusal()).toBe('Name: 501 characters is too long. It can be 500 at most.');
    expect(await listBodies('rig')).toEqual([]);
  });

  test('the reason of a step', async () => {
    await freshLog('in');
    await copyProcedure('own', DEFAULT_PROCEDURES['board-and-cone'], 'Mine');
    render(<Procedures rest={['own']} />);
    fireEvent.click((await screen.findAllByRole('button', { name: 'Change it' }))[0] as HTMLElement);
    await type('Why', 'x'.repeat(20_001));
    await press('Keep it');
    expect(await refusal()).toMatch(/20001 characters is too long/);
  });
});

test('a draft with a choice that is none of today’s options is taken for the first, not saved as it is', async () => {
  await freshLog('in');
  const { keepDraft } = await import('../../src/app/drafts.ts');
  await keepDraft('new box', {
    opening: '2',
    lid: 'Black cherry',
    lidGrain: 'cross',
    route: 'sideways',
    passes: 'one',
  });
  render(<NewBox />);
  await waitFor(() => expect((screen.getByLabelText('Opening') as HTMLInputElement).value).toBe('2'));
  await press('Plan it');
  await waitFor(async () =>
    expect((await allBoxes()).map(({ box }) => box.plan)).toMatchObject([
      { lid: { grain: 'end' }, route: 'recess-first', passes: 'two-thirds' },
    ]),
  );
});

test('a procedure with as many steps as a log can hold takes no more', async () => {
  await freshLog('in');
  const procedure = DEFAULT_PROCEDURES['board-and-cone'];
  const [first] = procedure.steps;
  if (!first) throw new Error('no step');
  const steps = Array.from({ length: 200 }, (_, i) => ({ ...first, key: `step ${i}`, hold: false }));
  await keep('procedure', 'own', () => ({ ...procedure, steps }));
  render(<Procedures rest={['own']} />);
  await type('What to do, in one sentence', 'One more');
  await press('Add a step');
  await waitFor(() => expect(failures.value).toEqual([{ act: 'procedure', of: 'own', reason: 'list-full' }]));
  expect((await listBodies('procedure'))[0]?.body.steps).toHaveLength(200);
});
