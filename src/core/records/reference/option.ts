import { attributeFor } from '../../fact/index.js';
import { measureParts, partsInTheFirst } from '../../model/index.js';
import { problemAt, type Problem } from '../../../base/problem/index.js';
import { unitName, withSign, type Unit } from '../../../base/units/index.js';
import { soundItems } from '../checked-record.js';
import type { Draft } from '../draft.js';
import type { RawNeed } from '../raw/option.js';
import type { CategoryDraft } from '../read-category.js';
import type { OptionDraft } from '../read-option.js';
import { some, unknown, unknownOption } from './unknown.js';

/** An option lives in a known category, is priced in what the category is measured in, and needs known trades. */
export function optionReferences(draft: Draft): readonly Problem[] {
  const told = new Set<string>();
  return draft.options.flatMap((option) => {
    const category = draft.categories.find(({ slug }) => slug === option.category);
    const needs = [
      ...needProblems(option, draft),
      ...dayProblems(option, draft),
      ...coatingProblems(option, draft),
      ...(category ? familyProblems(option, category) : []),
    ];
    if (!draft.slugs.categories.has(option.category)) {
      if (told.has(option.category)) return needs;
      told.add(option.category);
      const name = option.category;
      const message = `options stand in '${name}', which is no category`;
      const lives = `A category has a record content/categories/${name}.md`;
      return [
        ...needs,
        unknown(option.record.origin, [], {
          code: 'category-unknown',
          message,
          name,
          among: draft.slugs.categories,
          lives,
        }),
      ];
    }
    if (!category?.record.sound(['measure'])) return needs;
    return [...needs, ...partProblems(option, category.record.raw.measure.by)];
  });
}

/** A family is one of the option's category. */
function familyProblems(
  { record, category }: OptionDraft,
  { record: { raw, sound, meant } }: CategoryDraft,
): readonly Problem[] {
  const name = record.raw.family;
  if (name === undefined || !record.sound(['family']) || !sound(['families']) || meant('families')) return [];
  const among = Object.keys(raw.families ?? {});
  if (among.includes(name)) return [];
  const message = `${category} has no family '${name}'`;
  const lives =
    among.length === 0
      ? `Write it under families: in content/categories/${category}.md`
      : `Families of content/categories/${category}.md are ${some(among)}`;
  return [unknown(record.origin, ['family'], { code: 'family-unknown', message, name, among, lives })];
}

/** What an option is coated with is a paint of the house: an option of a category that asks for a sheen. */
function coatingProblems({ record: { raw, origin, sound } }: OptionDraft, draft: Draft): readonly Problem[] {
  if (!sound(['attributes'])) return [];
  const asks = draft.categories.find(({ record }) => record.raw.attributes?.[paintFact] !== undefined);
  const isPaint = (named: string): boolean =>
    draft.options.some(({ category, slug }) => category === asks?.slug && slug === named);
  return coatings.flatMap((name) => {
    const slug = raw.attributes?.[name];
    if (typeof slug !== 'string' || !asks || isPaint(slug)) return [];
    return [unknownOption(origin, ['attributes', name], slug, { category: asks.slug, draft })];
  });
}

const paintFact = attributeFor('paint', 'sheen').name;
const coatings = (['coating', 'riser-coating'] as const).map((name) => attributeFor('coated', name).name);

function partProblems(
  { parts, record: { raw, origin, sound }, category }: OptionDraft,
  by: string,
): readonly Problem[] {
  const asked: Readonly<Record<string, Unit>> = by in measureParts ? measureParts[by as keyof typeof measureParts] : {};
  const names = Object.keys(asked);
  const simple = names.length === 1 && names[0] === 'main';
  // Which of the two there must be was told when the option was read (`price-form.ts`).
  if (simple !== (raw.parts === undefined)) return [];
  // Of a price beside parts, which is a problem of its own, the parts are looked at.
  const looked = simple ? parts : parts.filter(({ path }) => path[0] === 'parts');
  const problems: Problem[] = [];
  for (const { part, path } of looked) {
    const unit = asked[part.part];
    if (unit === undefined) {
      const message = `${category} is measured by ${by}, which has no part '${part.part}'`;
      problems.push(
        unknown(origin, path, {
          code: 'part-unknown',
          message,
          name: part.part,
          among: names,
          lives: `Parts are ${names.join(', ')}`,
        }),
      );
    } else if (unit !== part.unit) {
      const message = `${category} is measured by ${by}, priced for ${unitName(unit)}, not for ${unitName(part.unit)}`;
      problems.push(
        problemAt(origin, [...path, 'material'], 'unit-unsuited', message, {
          fix: `write ${withSign('…')} / ${unitName(unit)}`,
        }),
      );
    }
  }
  if (raw.parts === undefined || !sound(['parts'])) return problems;
  const needed = names.filter((name) => !partsInTheFirst.includes(name));
  for (const name of needed.filter((one) => !Object.hasOwn(raw.parts ?? {}, one))) {
    const unit = unitName(asked[name] ?? '');
    const fix = `write ${name}: { material: … / ${unit}, labor: … / ${unit} }`;
    problems.push(
      problemAt(origin, ['parts'], 'part-missing', `${category} is measured by ${by}: the part '${name}' is missing`, {
        fix,
        onKey: true,
      }),
    );
  }
  return problems;
}

/** Milestones of an option are those of the house, and what is offered instead of it is an option of its category. */
function dayProblems({ record, category }: OptionDraft, draft: Draft): readonly Problem[] {
  const { slugs, house } = draft;
  const { origin, raw, sound } = record;
  const known = house?.milestoneIds;
  const milestones = (['needed-at', 'measured-after'] as const).flatMap((key) => {
    const name = raw[key];
    if (!known || !sound([key]) || name === undefined || known.has(name)) return [];
    const message = `the house has no milestone '${name}'`;
    const lives = `Milestones are ${some(known)}`;
    return [unknown(origin, [key], { code: 'milestone-unknown', message, name, among: known, lives })];
  });
  const instead = sound(['withdrawn']) ? raw.withdrawn?.instead : undefined;
  const among = slugs.options.get(category) ?? new Set<string>();
  if (instead === undefined || among.has(instead)) return milestones;
  return [...milestones, unknownOption(origin, ['withdrawn', 'instead'], instead, { category, draft })];
}

function needProblems({ record }: OptionDraft, { slugs, house }: Draft): readonly Problem[] {
  const { origin } = record;
  return soundItems<RawNeed>(record, 'needs').flatMap(({ raw, path }) => {
    const problems: Problem[] = [];
    if (!slugs.trades.has(raw.by)) {
      const lives = 'Trades live in content/trades/';
      const message = `there is no trade '${raw.by}'`;
      problems.push(
        unknown(origin, [...path, 'by'], { code: 'trade-unknown', message, name: raw.by, among: slugs.trades, lives }),
      );
    }
    const among = house?.milestoneIds;
    if (among && !among.has(raw.before)) {
      const lives = `Milestones are ${some(among)}`;
      const message = `the house has no milestone '${raw.before}'`;
      problems.push(
        unknown(origin, [...path, 'before'], {
          code: 'milestone-unknown',
          message,
          name: raw.before,
          among,
          lives,
        }),
      );
    }
    return problems;
  });
}
