/**
 * The two linters of the OpenAPI document, every rule of theirs switched on. Neither asks the
 * network: the document refers to nothing outside itself.
 *
 * They are large and needed for one test alone, so they are loaded by name: a checkout without
 * them still compiles, and is told what to run.
 */

/** Such as `oas3-unused-component: components/schemas/A: ...`. */
export type Complaint = string;

interface SpectralCore {
  readonly Spectral: new () => {
    setRuleset(ruleset: { readonly extends: readonly (readonly [unknown, 'all'])[] }): void;
    readonly ruleset?: { readonly rules: Readonly<Record<string, { readonly enabled: boolean }>> };
    run(document: object): Promise<
      readonly {
        readonly code: string | number;
        readonly path: readonly PropertyKey[];
        readonly message: string;
      }[]
    >;
  };
}

interface SpectralRulesets {
  readonly oas: unknown;
}

interface InDefault<Module> {
  readonly default: Module;
}

interface Redocly {
  createConfig(config: { readonly extends: readonly string[] }): Promise<unknown>;
  lintFromString(lint: { readonly source: string; readonly config: unknown }): Promise<
    readonly {
      readonly ruleId: string;
      readonly message: string;
      readonly location: readonly { readonly pointer?: string }[];
    }[]
  >;
}

/** `spectral:oas` with all rules, those too that are off where one asks for the usual ones. */
export async function bySpectral(document: object): Promise<readonly Complaint[]> {
  // Both are CommonJS, whose exports Node does not all find by name.
  const { Spectral } = (await load<InDefault<SpectralCore>>('@stoplight/spectral-core')).default;
  const { oas } = (await load<InDefault<SpectralRulesets>>('@stoplight/spectral-rulesets')).default;
  const spectral = new Spectral();
  spectral.setRuleset({ extends: [[oas, 'all']] });
  const rules = Object.entries(spectral.ruleset?.rules ?? {});
  const silent = rules.filter(([, { enabled }]) => !enabled).map(([name]) => name);
  if (rules.length < 50 || silent.length > 0) {
    throw new Error(`${rules.length} rules, of which do not speak: ${silent.join(', ')}`);
  }
  const found = await spectral.run(document);
  return found.map(({ code, path, message }) => `${code}: ${path.join('/')}: ${message}`);
}

/** `recommended-strict`: what others only warn of is an error there. */
export async function byRedocly(document: object): Promise<readonly Complaint[]> {
  const redocly = await load<Redocly>('@redocly/openapi-core');
  const config = await redocly.createConfig({ extends: ['recommended-strict'] });
  const found = await redocly.lintFromString({ source: JSON.stringify(document), config });
  return found.map(({ ruleId, location: [at], message }) => {
    return `${ruleId}: ${at?.pointer ?? ''}: ${message}`;
  });
}

async function load<Module>(name: string): Promise<Module> {
  try {
    return (await import(name)) as Module;
  } catch (error) {
    throw new Error(`${name} is not installed: run npm ci`, { cause: error });
  }
}
