/** What kind of quantity a number is: fixes its dimension, its SI unit and the units in which readers expect it. */
export interface Kind {
  /** In words, for messages: "a length". */
  readonly name: string;
  /** The SI unit in which the number is kept (angles: degrees). */
  readonly si: string;
  /** Units in which it is shown. */
  readonly metric: string;
  readonly us: string;
  /** Further units offered when the given one does not fit. */
  readonly alsoAccepted: readonly string[];
}

const kind = (name: string, si: string, metric: string, us: string, ...alsoAccepted: string[]): Kind => ({
  name,
  si,
  metric,
  us,
  alsoAccepted,
});

/** Every kind of quantity that a design or a result may hold. */
export const kinds = {
  number: kind('a plain number', '', '', ''),
  fraction: kind('a fraction', '', '%', '%'),
  angle: kind('an angle', 'deg', 'deg', 'deg', 'rad'),
  length: kind('a length', 'm', 'mm', 'in', 'cm', 'm', 'um', 'mil', 'ft'),
  longLength: kind('a length', 'm', 'm', 'ft', 'mm', 'cm', 'in', 'yd'),
  area: kind('an area', 'm^2', 'cm^2', 'in^2', 'mm^2', 'm^2', 'ft^2'),
  smallArea: kind('an area', 'm^2', 'mm^2', 'in^2', 'm^2', 'cm^2'),
  mass: kind('a mass', 'kg', 'g', 'oz', 'kg', 'lb'),
  time: kind('a time', 's', 'min', 'min', 's', 'h'),
  rate: kind('a rate', '1/s', '1/min', '1/min', '1/s', '1/h'),
  frequency: kind('a frequency', '1/s', 'Hz', 'Hz', '1/s'),
  density: kind('a density', 'kg/m^3', 'kg/m^3', 'lb/ft^3', 'g/cm^3', 'lb/in^3'),
  arealMass: kind('an areal mass', 'kg/m^2', 'g/m^2', 'oz/yd^2', 'kg/m^2', 'oz/ft^2'),
  linearDensity: kind('a linear density', 'kg/m', 'tex', 'denier', 'dtex', 'g/km'),
  tenacity: kind('a tenacity', 'N/(kg/m)', 'N/tex', 'gf/denier', 'cN/dtex', 'cN/tex'),
  threadModulus: kind('a thread modulus', 'N/(kg/m)', 'N/tex', 'gf/denier', 'cN/dtex'),
  modulus: kind('a modulus', 'Pa', 'GPa', 'Msi', 'MPa', 'psi', 'ksi'),
  stress: kind('a stress', 'Pa', 'MPa', 'ksi', 'GPa', 'psi'),
  pressure: kind('a pressure', 'Pa', 'kPa', 'psi', 'Pa', 'bar', 'MPa'),
  force: kind('a force', 'N', 'N', 'lbf', 'kN', 'kgf'),
  forcePerLength: kind('a force per length', 'N/m', 'N/mm', 'lbf/in', 'kN/m', 'N/m'),
  momentPerLength: kind('a moment per length', 'N', 'N', 'in*lbf/in', 'N*m/m', 'N*mm/mm'),
  torque: kind('a moment', 'N*m', 'N*mm', 'in*lbf', 'N*m'),
  couplingStiffness: kind('a coupling stiffness', 'N', 'N', 'lbf', 'kN'),
  bendingStiffness: kind('a bending stiffness per width', 'N*m', 'N*mm', 'in*lbf', 'N*m'),
  stretchCompliance: kind('a strain per force per length', 'm/N', 'mm/kN', 'in/lbf', 'm/N', 'mm/N'),
  couplingCompliance: kind('a strain per moment per length', '1/N', '1/kN', '1/lbf', '1/N'),
  bendingCompliance: kind('a curvature per moment per length', '1/(N*m)', '1/(N*m)', '1/(in*lbf)', '1/(N*mm)'),
  perStress: kind('a coefficient per stress', '1/Pa', '1/GPa', '1/ksi', '1/MPa'),
  perStressSquared: kind('a coefficient per stress squared', '1/Pa^2', '1/GPa^2', '1/ksi^2', '1/MPa^2'),
  stressPerTemperature: kind('a stress per temperature difference', 'Pa/K', 'MPa/K', 'ksi/degF', 'Pa/K'),
  bedStiffness: kind('a stiffness per area', 'N/m^3', 'N/mm^3', 'lbf/in^3', 'N/m^3'),
  energy: kind('an energy', 'J', 'mJ', 'in*lbf', 'J', 'N*m', 'N*mm'),
  toughness: kind('a toughness', 'J/m^2', 'J/m^2', 'in*lbf/in^2', 'kJ/m^2', 'N/mm'),
  temperature: kind('a temperature', 'K', 'degC', 'degF', 'K'),
  temperatureChange: kind('a temperature difference', 'K', 'K', 'degF', 'degC'),
  temperatureGradient: kind('a temperature gradient', 'K/m', 'K/mm', 'degF/in', 'K/m'),
  expansion: kind('a thermal expansion coefficient', '1/K', '1e-6/K', '1e-6/degF', '1/K', 'um/m/K'),
  strain: kind('a strain', '', '1e-6', '1e-6', '%'),
  perLength: kind('a count per length', '1/m', '1/cm', '1/in', '1/mm'),
  curvature: kind('a curvature', '1/m', '1/m', '1/in', '1/mm'),
  curvatureExpansion: kind('a curvature per temperature difference', '1/m/K', '1/m/K', '1/in/degF'),
  perArea: kind('a count per area', '1/m^2', '1/cm^2', '1/in^2', '1/mm^2'),
  lengthPerArea: kind('a length per area', 'm/m^2', 'm/m^2', 'yd/yd^2', 'm/cm^2'),
  lengthPerLength: kind('a length per length', 'm/m', 'm/m', 'yd/yd'),
  massPerLength: kind('a mass per length', 'kg/m', 'g/m', 'oz/yd', 'kg/m'),
} as const satisfies Record<string, Kind>;

/** A kind of quantity by its name, one of {@link kinds}. */
export type KindName = keyof typeof kinds;
/** The reader's choice of units. */
export type UnitSystem = 'metric' | 'us';
