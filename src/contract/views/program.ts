/**
 * What the program says of itself. It is of no catalogue, and whole in every view.
 */

import type { ShownObjects } from './shown.js';

const LIST = 'engine lang items next counts';

export const SHOWN_OF_PROGRAM: ShownObjects = {
  CalculationList: { public: LIST },
  CalculationEntry: { public: 'calculation title about inputs outputs formulas sources example' },
  CalculationAnswer: {
    public:
      'engine lang units calculation title given results notFound warnings formulas assumptions ' +
      'validity sources cautions',
  },
  CalculationResult: { public: 'output name values outcome code' },
  FormulaSource: { public: 'title basis' },
  CodeList: { public: LIST },
  CodeEntry: { public: 'code group kind always perhaps example' },
  LimitList: { public: LIST },
  LimitEntry: { public: 'name value unit about' },
  Live: { public: 'status' },
  Ready: { public: 'status edition' },
};
