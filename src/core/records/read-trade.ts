import type { Trade } from '../model/index.js';
import { hasErrors, type Problem } from '../../base/problem/index.js';
import type { Checked } from './checked-record.js';
import type { RawTrade } from './raw/trade.js';

/** A trade's record, as far as it can be read. */
export interface TradeDraft {
  readonly slug: string;
  readonly record: Checked<RawTrade>;
  readonly whole?: Trade;
  readonly problems: readonly Problem[];
}

export function readTrade(record: Checked<RawTrade>): TradeDraft {
  const { slug, raw, body, origin, problems } = record;
  if (hasErrors(problems)) return { slug, record, problems };
  const whole: Trade = {
    slug,
    name: raw.name,
    contact: raw.contact,
    sections: raw.sections,
    needsToKnow: raw['needs-to-know'] ?? [],
    scopeIn: raw['scope-in'] ?? [],
    scopeOut: raw['scope-out'] ?? [],
    ...(raw.carries && { carries: raw.carries.map(({ id, what, layer = 'backing' }) => ({ id, what, layer })) }),
    schedules: raw.schedules ?? [],
    body,
    origin,
  };
  return { slug, record, whole, problems };
}
