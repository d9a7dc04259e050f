import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { MANAGE_GUILD } from '../../../fakes/discord/world.ts';
import { DOORS, type House, openHouse } from './house.ts';
import { DOT_PNG } from './small-desk.ts';

describe.each(DOORS)('through the %s door', (kind) => {
  let house: House;
  beforeAll(async () => {
    house = await openHouse(kind);
  });
  afterEach(() => house.double.faults.clear());
  afterAll(async () => {
    await house.close();
  });

  const channel = () => house.double.world.addChannel(house.double.world.addGuild().id);

  test('a command is answered with what it was given, in words of Discord', async () => {
    const options = { what: 'frost', often: 2, loud: true, low: -3.5 };
    const first = await house.double.answerTo({
      command: 'say',
      options,
      channel: channel(),
      locale: 'de',
      userId: '123456789012345678',
    });
    expect(first.type).toBe(4);
    expect(first.data['content']).toContain('**You said frost.**');
    expect(first.data['content']).toContain('often=2 loud=true');
    expect(first.data['content']).toContain('low=-3.5');
    expect(first.data['content']).toContain('- de\n- channel\nby 123456789012345678');
    expect(first.data['flags']).toBeUndefined();
    expect(first.afterMs).toBeLessThan(3000);
  });

  test('a command in a direct message and one between people are told apart', async () => {
    const direct = await house.double.answerTo({ command: 'say', options: { what: 'a' } });
    const between = await house.double.answerTo({ command: 'say', options: { what: 'a' }, betweenPeople: true });
    expect(direct.data['content']).toContain('- direct');
    expect(between.data['content']).toContain('- channel');
  });

  test('what a member typed pings nobody and is no markup', async () => {
    const what = '@everyone <@123456789012345678> **x** <t:0:R> https://example.org';
    const first = await house.double.answerTo({ command: 'say', options: { what } });
    expect(first.data['content']).not.toContain('@everyone');
    expect(first.data['content']).toContain('\\<@\u200b123456789012345678\\>');
    expect(first.data['allowed_mentions']).toEqual({ parse: [] });
  });

  test('an answer about one member is seen by that member alone', async () => {
    const shown = await house.double
      .type({ command: 'plot', action: 'cover', options: { with: 'straw' }, channel: channel() })
      .shown();
    expect(shown.isPrivate).toBe(true);
    expect(shown.body['content']).toBe('**Laid straw.**');
  });

  test('a refusal of an open command is private', async () => {
    const conversation = house.double.type({ command: 'club', channel: channel() });
    expect((await conversation.shown()).isPrivate).toBe(true);
  });

  test('who may manage the server is let through, with a button under the answer', async () => {
    const there = channel();
    const options = { where: there.id };
    const first = await house.double.answerTo({ command: 'club', options, channel: there, rights: MANAGE_GUILD });
    expect(first.data['content']).toBe(`**Set for ${there.id}.**`);
    expect(first.data['components']).toEqual([
      { type: 1, components: [{ type: 2, style: 2, label: 'Covered', custom_id: 'covered:a' }] },
    ]);
  });

  test('suggestions follow what is typed', async () => {
    const first = await house.double.suggest({
      command: 'plot',
      action: 'cover',
      options: { with: 'o' },
      focused: 'with',
    }).first;
    expect(first.type).toBe(8);
    expect(first.data['choices']).toEqual([
      { name: 'row cover', value: 'row cover' },
      { name: 'low tunnel', value: 'low tunnel' },
      { name: 'cold frame', value: 'cold frame' },
    ]);
  });

  test.each(['boom', 'never'])('suggestions that fail (%s) are none, in time', async (typed) => {
    const first = await house.double.suggest({
      command: 'plot',
      action: 'cover',
      options: { with: typed },
      focused: 'with',
    }).first;
    expect(first.data).toEqual({ choices: [] });
    expect(first.afterMs).toBeLessThan(2500);
  });

  test('a pressed button is answered, for all or for one as it says', async () => {
    const open = await house.double.press({ buttonId: 'covered:bed 2', channel: channel() }).shown();
    const own = await house.double.press({ buttonId: 'mine:', channel: channel() }).shown();
    expect([open.body['content'], open.isPrivate]).toEqual(['**Noted: bed 2 is covered.**', false]);
    expect([own.body['content'], own.isPrivate]).toEqual(['**Your beds.**', true]);
  });

  test('a button of an older message is answered politely and privately', async () => {
    const old = await house.double.press({ buttonId: 'gone:1' }).shown();
    expect(old.isPrivate).toBe(true);
    expect(old.body['content']).toContain('Please ask again');
  });

  test('a form opens, and what is filled in reaches the command that it names', async () => {
    const window = await house.double.press({ buttonId: 'form:' }).first;
    expect(window.type).toBe(9);
    expect(window.data['title']).toBe('Your plot');
    const filled = await house.double
      .fill({ formId: 'plot place', answers: { place: 'by the wall', exposure: ' ' } })
      .shown();
    expect(filled.isPrivate).toBe(true);
    expect(filled.body['content']).toContain('by the wall');
    expect(filled.body['content']).not.toContain('exposure');
  });

  test('long work shows "thinking" within a second, then the answer with its picture', async () => {
    const conversation = house.double.type({ command: 'wait', action: 'here', channel: channel() });
    const first = await conversation.first;
    expect([first.type, first.data]).toEqual([5, {}]);
    // A second, and what a loaded machine may add.
    expect(first.afterMs).toBeLessThan(1500);
    house.gate.open();
    const shown = await conversation.shown();
    expect(shown.body['content']).toBe('**Done at last.**');
    expect(shown.body['attachments']).toEqual([{ id: '0', filename: 'dot.png', description: 'A dot.' }]);
    expect(shown.files[0]?.bytes.equals(DOT_PNG)).toBe(true);
    expect(shown.isPrivate).toBe(false);
  });

  test('long private work is private from "thinking" on', async () => {
    const conversation = house.double.type({ command: 'wait', action: 'alone', channel: channel() });
    expect((await conversation.first).data).toEqual({ flags: 64 });
    house.gate.open();
    expect(await conversation.shown()).toMatchObject({ isPrivate: true, body: { content: '**Yours at last.**' } });
  });

  test('an answer that turns out private after "thinking" for all is not shown to all', async () => {
    const conversation = house.double.type({ command: 'wait', action: 'turned', channel: channel() });
    await conversation.first;
    house.gate.open();
    const [secret] = await conversation.followedUp(1);
    expect(secret).toMatchObject({ isPrivate: true, body: { content: '**Secret.**' } });
    expect((await conversation.shown()).body['content']).toContain('for you alone');
  });

  test('an attached file is read, and one too big or not text is refused in a sentence', async () => {
    const read = async (bytes: Buffer) => {
      const list = { file: { name: 'list.csv', bytes }, contentType: 'text/csv' };
      return (await house.double.answerTo({ command: 'plot', action: 'read', options: { list } })).data['content'];
    };
    expect(await read(Buffer.from('kale'))).toBe('**list.csv says kale.**');
    expect(await read(Buffer.alloc(2000, 'a'))).toContain('too big');
    expect(await read(Buffer.from([0xff, 0xfe, 0xff]))).toContain('not text');
  });

  test.each([204, 302, 404, 410, 429, 503])(
    'an attached file answered with %i is refused, and the bot goes on',
    async (status) => {
      const unhandled: unknown[] = [];
      const note = (error: unknown) => unhandled.push(error);
      process.on('uncaughtException', note);
      const list = { file: { name: 'list.csv', bytes: Buffer.from(status === 204 ? '' : 'gone') }, status };
      const asked = { command: 'plot', action: 'read', options: { list } };
      const answers = await Promise.all([1, 2, 3].map(() => house.double.answerTo(asked)));
      for (const { data } of answers) expect(data['content']).toContain('does not have that file any more');
      expect((await house.double.answerTo({ command: 'plot', action: 'keep' })).files).toHaveLength(1);
      process.off('uncaughtException', note);
      expect(unhandled).toEqual([]);
    },
  );

  test('a file is handed out', async () => {
    const first = await house.double.answerTo({ command: 'plot', action: 'keep' });
    expect(first.files.map((file) => [file.name, file.bytes.toString()])).toEqual([['plot.json', '{"beds":2}']]);
    expect(first.data['flags']).toBe(64);
  });

  test('a long answer is shortened, and the whole of it is attached', async () => {
    const first = await house.double.answerTo({ command: 'long' });
    expect(String(first.data['content'])).toContain('The whole answer is in the attached text.');
    const whole = first.files.find((file) => file.name === 'whole-answer.txt')?.bytes.toString();
    expect(whole).toContain('Bed 40:');
  });

  test('a command that fails is answered politely, without its inner words', async () => {
    const first = await house.double.answerTo({ command: 'broken', channel: channel() });
    expect(first.data['content']).toContain('Something went wrong on my side');
    expect(JSON.stringify(first.data)).not.toContain('inner secret');
    expect(first.data['flags']).toBe(64);
  });

  test('a first answer that Discord lost to a fault is sent again', async () => {
    const how = { kind: 'answer', answer: { status: 502 } } as const;
    house.double.fail({ method: 'POST', path: /callback$/, times: 1, how });
    const first = await house.double.answerTo({ command: 'plot', action: 'keep' });
    expect(first.data['content']).toBe('**Here it is.**');
  });

  test('a first answer that arrived although Discord said otherwise is not taken for lost', async () => {
    const how = { kind: 'done-but-answer', answer: { status: 500 } } as const;
    house.double.fail({ method: 'POST', path: /callback$/, times: 1, how });
    const conversation = house.double.type({ command: 'plot', action: 'keep' });
    expect((await conversation.shown()).files).toHaveLength(1);
    expect(conversation.followUps).toEqual([]);
  });

  test('an edit is repeated until Discord has noted the first answer', async () => {
    const how = { kind: 'answer', answer: { status: 404, json: { code: 10015, message: 'Unknown Webhook' } } } as const;
    house.double.fail({ method: 'PATCH', path: /@original$/, times: 2, how });
    const conversation = house.double.type({ command: 'wait', action: 'here' });
    await conversation.first;
    house.gate.open();
    expect((await conversation.shown()).body['content']).toBe('**Done at last.**');
    expect(conversation.edits).toHaveLength(1);
  });

  test('files that are too large for the place are left out, and the words still come', async () => {
    const how = {
      kind: 'answer',
      answer: { status: 413, json: { code: 40005, message: 'Request entity too large' } },
    } as const;
    house.double.fail({ method: 'POST', path: /callback$/, times: 1, how });
    const first = await house.double.answerTo({ command: 'plot', action: 'keep' });
    expect([first.data['content'], first.files]).toEqual(['**Here it is.**', []]);
  });

  test('a hundred commands at once are all answered', async () => {
    const asked = Array.from({ length: 100 }, (_, index) =>
      house.double.answerTo({ command: 'say', options: { what: `n${index}` }, channel: channel() }),
    );
    const answers = await Promise.all(asked);
    expect(answers.map((first) => String(first.data['content']).split('\n')[0])).toEqual(
      answers.map((_, index) => `**You said n${index}.**`),
    );
  });

  test('nothing that was sent breaks a documented limit or Discord’s description', async (ctx) => {
    await house.double.answerTo({ command: 'long' });
    expect(house.double.problems).toEqual([]);
    const { unchecked } = house.double;
    if (unchecked !== undefined) ctx.skip(unchecked);
  });
});

test.each(DOORS)('a desk that itself throws does not reach the person or end the program (%s)', async (kind) => {
  const house = await openHouse(kind, {
    desk: {
      answer: () => {
        throw new Error('thrown at once');
      },
      answerPress: async () => {
        throw new Error('rejected');
      },
    },
  });
  const typed = await house.double.answerTo({ command: 'say', options: { what: 'a' } });
  const pressed = await house.double.press({ buttonId: 'mine:' }).first;
  for (const first of [typed, pressed]) expect(first.data['content']).toContain('Something went wrong on my side');
  await house.close();
});

test.each(DOORS)('a stop finishes what is being answered and puts off what comes meanwhile (%s)', async (kind) => {
  const house = await openHouse(kind);
  const underway = house.double.type({ command: 'wait', action: 'here' });
  await underway.first;
  const stopped = house.door.stop();
  const late = await house.double.answerTo({ command: 'say', options: { what: 'late' } });
  expect(late.data).toMatchObject({ flags: 64 });
  expect(late.data['content']).toContain('being restarted');
  house.gate.open();
  expect((await underway.shown()).body['content']).toBe('**Done at last.**');
  await stopped;
  await house.close();
});

test.each(DOORS)('a stop does not wait for ever (%s)', async (kind) => {
  const house = await openHouse(kind, { finishWithinMs: 50 });
  await house.double.type({ command: 'wait', action: 'here' }).first;
  const begun = performance.now();
  await house.door.stop();
  expect(performance.now() - begun).toBeLessThan(2000);
  await house.close();
});
