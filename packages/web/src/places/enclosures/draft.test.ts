import { expect, test } from 'vitest';
import { forgetDraft, recallDraft, rememberDraft } from './draft.ts';

// Without a browser nothing is kept on the device; drafts then last as long as the page.
test('a draft is there until it is forgotten, each under its own id', () => {
  rememberDraft('pond', { text: 'name: Pond\n', basedOn: 'v1' });
  rememberDraft('new', { text: '', basedOn: null });
  expect(recallDraft('pond')).toEqual({ text: 'name: Pond\n', basedOn: 'v1' });
  expect(recallDraft('new')).toEqual({ text: '', basedOn: null });
  forgetDraft('pond');
  expect(recallDraft('pond')).toBeUndefined();
  expect(recallDraft('new')).toBeDefined();
});
