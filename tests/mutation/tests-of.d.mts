export declare const testsOf: (root: string, module: string) => string[];
