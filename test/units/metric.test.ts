import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  fromHouse,
  houseRate,
  inHouseWords,
  inLocale,
  isCurrency,
  isLanguage,
  locale,
  parseArea,
  parseLength,
  parseMoney,
  parsePitch,
  parseQuantity,
  parseRate,
  parseUsage,
  parseWeight,
  printArea,
  printDay,
  printLength,
  printMoney,
  printPitch,
  printQuantity,
  printRate,
  printResistance,
  printWeightPer,
  usualLocale,
  type Area,
  type Cents,
  type Length,
  type Reading,
} from '../../src/base/units/index.js';

const euros = { units: 'metric', currency: 'EUR' } as const;
const inMetres = <T>(work: () => T): T => inLocale(euros, work);
const valueOf = <T>(reading: Reading<T>): T => {
  if (!reading.ok) throw new Error(reading.why);
  return reading.value;
};

describe('a comma before the decimals', () => {
  it('is read in a metric house where nothing else can be meant', () => {
    inMetres(() => {
      expect(parseLength('4,42 m')).toEqual({ ok: true, value: 4_420_000_000 });
      expect(parseLength('0,125 m')).toEqual({ ok: true, value: 125_000_000 });
      expect(parseMoney('€12.450,50')).toEqual({ ok: true, value: 1_245_050 });
      expect(parseMoney("12'450,50 €")).toEqual({ ok: true, value: 1_245_050 });
      expect(parseMoney('EUR 12 450')).toEqual({ ok: true, value: 1_245_000 });
      expect(valueOf(parseArea('2,5 m2'))).toBeCloseTo(2.5 / 0.09290304, 9);
    });
  });

  it('is refused where it may set off thousands, with both ways to write it', () => {
    inMetres(() => {
      expect(parseLength('1,250 m')).toMatchObject({ ok: false, fix: 'write 1250 m or 1.250 m' });
      for (const sum of ['€320,000', '€320.000', '320.000 €'])
        expect(parseMoney(sum)).toEqual({
          ok: false,
          why: `'${sum}' can be read in two ways`,
          fix: 'write €320000 or €320.00',
        });
      expect(parseMoney('320.000,00 €')).toEqual({ ok: true, value: 32_000_000 });
      expect(parseQuantity('1,250 m2')).toMatchObject({ ok: false });
    });
  });

  it('is no decimal in a house of feet', () => {
    expect(parseLength('4,42 m')).toMatchObject({ ok: false, fix: 'did you mean 4.42 m?' });
    expect(parseMoney('$1,250')).toEqual({ ok: true, value: 125_000 });
  });
});

describe('money of any currency', () => {
  // ISO 4217: the yen has no smaller coin, the Kuwaiti dinar has a thousand of them.
  it.each([
    ['EUR', 1_245_050, '€12,450.50'],
    ['GBP', 740, '£7.40'],
    ['CHF', 1_245_000, 'CHF\u00a012,450'],
    ['JPY', 12_450, '¥12,450'],
    ['KWD', 12_450, 'KWD\u00a012.450'],
  ])('%s', (currency, coins, text) => {
    inLocale({ units: 'metric', currency }, () => {
      expect(printMoney(coins as Cents)).toBe(text);
      expect(parseMoney(text.replaceAll(',', ''))).toEqual({ ok: true, value: coins });
    });
  });

  it('refuses another one, and more digits than it has', () => {
    expect(inMetres(() => parseMoney('$12'))).toMatchObject({ ok: false, why: `'$12' names a currency of its own` });
    expect(inMetres(() => parseMoney('CHF 12'))).toMatchObject({ ok: false });
    const yen = inLocale({ units: 'metric', currency: 'JPY' }, () => parseMoney('¥7.40'));
    expect(yen).toMatchObject({ ok: false, why: `'¥7.40' has more digits than JPY has` });
    expect([isCurrency('EUR'), isCurrency('XYZ'), isCurrency('euro')]).toEqual([true, false, false]);
  });
});

describe('rates', () => {
  it('for a square metre or a metre come back digit by digit', () => {
    inMetres(() => {
      for (const text of ['€38.50 / m²', '€0.075 / m²', '€94 / m', '€385 / each'])
        expect(printRate(valueOf(parseRate(text)))).toBe(text);
      expect(valueOf(parseRate('38,50 € / m2'))).toEqual(valueOf(parseRate('€38.50 per sqm')));
    });
  });

  it('and so does every rate to four digits', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 99_999_999 }), fc.constantFrom('m²', 'm'), (amount, unit) => {
        inMetres(() => {
          const { rate } = houseRate(valueOf(parseRate(`€${amount / 10_000} / ${unit}`)));
          expect(rate.amount / 10 ** rate.scale).toBe(amount / 10_000);
        });
      }),
    );
  });
});

describe('figures of a metric house', () => {
  // Worked by hand from 0.3048 m, 0.45359237 kg: NIST SP 811.
  it('areas, weights, resistances, slopes', () => {
    inMetres(() => {
      expect(printArea(100 as Area)).toBe('9.29 m²');
      expect(printQuantity(10, 'lin ft')).toBe('3.05 m');
      expect(printQuantity(100, 'cu ft', 0)).toBe('2.8 m³');
      expect(printWeightPer({ pounds: 15, per: 'sq ft' })).toBe('73.24 kg / m²');
      expect(printResistance(49)).toBe('R 8.63 m² K / W');
      expect(printPitch(Math.tan(Math.PI / 6))).toBe('30°');
      expect(printLength((14.5 * 304_800_000) as Length)).toBe('4.42 m');
    });
  });

  it('weights, usages and slopes are read', () => {
    inMetres(() => {
      expect(valueOf(parseWeight('73.2364 kg / m2')).pounds).toBeCloseTo(15, 3);
      const { amount, unit, per, of } = valueOf(parseUsage('0.4 kg / m2'));
      expect([amount, unit, of]).toEqual([0.4, 'kg', 'sq ft']);
      expect(per).toBeCloseTo(10.7639, 4);
      expect(valueOf(parsePitch('45 %'))).toEqual({ rise: 45, run: 100 });
      const { rise, run } = valueOf(parsePitch('30°'));
      expect(rise / run).toBeCloseTo(Math.tan(Math.PI / 6), 12);
      expect(parsePitch('90°').ok).toBe(false);
      // 5.678 is the R in American units of 1 m²·K/W.
      expect(fromHouse(1, 'sq ft h °F / Btu')).toBeCloseTo(5.678, 3);
    });
  });

  it('an area or a length is read back as it was written, in either house', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1_000_000 }), (hundredths) => {
        inMetres(() => {
          const area = valueOf(parseArea(`${hundredths / 100} m2`));
          expect(printArea(area).replaceAll(',', '')).toBe(`${hundredths / 100} m²`);
        });
      }),
    );
  });

  it('words of the program are told in metres', () => {
    const words = 'Cables 4 1/2" apart, 6\'-8" high, over 300 sq ft of 17 lb on a square foot';
    expect(inMetres(() => inHouseWords(words))).toBe('Cables 114 mm apart, 2.032 m high, over 27.9 m² of 83 kg / m²');
    expect(inHouseWords(words)).toBe(words);
  });
});

describe('days', () => {
  it('are written as the house’s language has them', () => {
    const day = (language?: string): string =>
      inLocale({ ...usualLocale, ...(language !== undefined && { language }) }, () => printDay('2026-05-04'));
    expect([day(), day('en-US'), day('en-GB'), day('de-CH')]).toEqual([
      '4 May 2026',
      'May 4, 2026',
      '4 May 2026',
      '4. Mai 2026',
    ]);
    expect([isLanguage('de-CH'), isLanguage('no language')]).toEqual([true, false]);
  });
});

describe('the locale in force', () => {
  it('is the one before again, when work ends, fails or takes its time', async () => {
    const before = locale();
    expect(inMetres(locale)).toEqual(euros);
    expect(() =>
      inMetres(() => {
        throw new Error('no');
      }),
    ).toThrow('no');
    expect(locale()).toBe(before);
    const late = inMetres(async () => {
      await Promise.resolve();
      return locale();
    });
    expect(await late).toEqual(euros);
    expect(locale()).toBe(before);
  });
});
