import type { Working } from '../working/index.js';
import { stiffnessAs } from './cloth-steps.js';
import { wayAs, type YarnPath } from './crimp-geometry.js';
import type { InPlaneConstants, ReducedStiffness } from './reduced-stiffness.js';
import {
  type LayerStiffness,
  meanCompliance,
  type TiltMeans,
  withAssumed,
  type YarnConstants,
} from './undulated-yarn.js';

/** An undulated layer of a cloth. */
interface WavyLayer {
  readonly way: YarnPath;
  readonly tilt: TiltMeans;
  readonly yarn: YarnConstants;
  readonly layer: LayerStiffness;
}

/** How the factors of the crimp come about. */
interface CrimpParts {
  readonly warp: WavyLayer;
  readonly weft: WavyLayer;
  readonly cloth: {
    readonly s_warp: number;
    readonly average: ReducedStiffness;
    readonly flat: InPlaneConstants;
    readonly wavy: InPlaneConstants;
    readonly factors: { readonly E1: number; readonly E2: number };
  };
}

const layerAs = (name: 'warp' | 'weft', [Q11, Q12, Q22]: LayerStiffness): Record<string, number> => ({
  [`Q_${name}11`]: Q11,
  [`Q_${name}12`]: Q12,
  [`Q_${name}22`]: Q22,
});

/** Takes down the mean tilt and the stiffness of one of the two layers. */
function showLayer(name: 'warp' | 'weft', { way, tilt, yarn, layer }: WavyLayer, working: Working): void {
  const { u_y = 0, q_y = 0 } = wayAs(way);
  const means = { s_2: tilt.s2, cs_22: tilt.c2s2, c_2: tilt.c2, c_4: tilt.c4, s_4: tilt.s4 };
  working.step('tiltMeans', { u_y, q_y, ...means });
  const { E1, E2, G13, nu12, nu23 } = withAssumed(yarn);
  const { S11: S_11, S12: S_12 } = meanCompliance(yarn, tilt);
  working.step(name === 'warp' ? 'undulatedWarp' : 'undulatedWeft', {
    ...means,
    E1,
    E2,
    G13,
    nu12,
    nu23,
    S_11,
    S_12,
    ...layerAs(name, layer),
  });
}

/** Takes down the crimp of a cloth from the way of its yarns. */
export function showCrimp({ warp, weft, cloth }: CrimpParts, working: Working): void {
  showLayer('warp', warp, working.part('warp'));
  showLayer('weft', weft, working.part('weft'));
  const { s_warp, average, flat, wavy, factors } = cloth;
  working.step('crimpFactors', {
    s_warp,
    ...layerAs('warp', warp.layer),
    ...layerAs('weft', weft.layer),
    ...stiffnessAs('cloth', average),
    E_wavy1: wavy.E1,
    E_wavy2: wavy.E2,
    E_flat1: flat.E1,
    E_flat2: flat.E2,
    k_warp: factors.E1,
    k_weft: factors.E2,
  });
}
