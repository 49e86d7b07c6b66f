/** Numbers, units, money and dates as surveyors write them. Knows no syntax tree, file or editor. */
export { scanFigure } from './scan.js';
export { convertTo, nearestUnit, parseFigure, type DateFigure, type Figure, type FigureResult, type QuantityFigure } from './parse.js';
export { formatQuantity, inBothSystems, otherSystem, significant, type FormatOptions, type UnitSystem } from './format.js';
export { allUnits, dimensionTitle, units, type Dimension, type Unit } from './units.js';
export { nearest } from './nearest.js';
