import type { Entity } from '../step/value.js';
import type { SpaceShape } from './shape.js';
import type { Storey } from './storey.js';

/** A space of the model that may become a room. */
export interface Space {
  readonly entity: Entity;
  readonly name: string;
  readonly number: string;
  /** Of its room's file. */
  readonly slug: string;
  readonly storey: Storey;
  readonly shape: SpaceShape;
}

/** `#30 101 Kitchen`: as the model and its people know it. */
export function spaceTitle({ entity, number, name }: Pick<Space, 'entity' | 'number' | 'name'>): string {
  return `#${entity.id} ${[number, name].filter((word) => word !== '').join(' ')}`;
}
