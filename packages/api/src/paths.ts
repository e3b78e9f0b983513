/**
 * Every route's method and path: the one place that says where things are. The schemas in `routes.ts` and the
 * client both build on it, so the client needs no schema in the browser.
 */
export const PATHS = {
  about: { method: 'get', path: '/api/about' },
  readSignIn: { method: 'get', path: '/api/sign-in' },
  signIn: { method: 'post', path: '/api/sign-in' },
  signOut: { method: 'delete', path: '/api/sign-in' },
  lockDevice: { method: 'post', path: '/api/sign-in/lock' },
  takeOver: { method: 'post', path: '/api/sign-in/take-over' },
  choosePassPhrase: { method: 'put', path: '/api/sign-in/pass-phrase' },
  choosePin: { method: 'put', path: '/api/sign-in/pin' },
  listAccounts: { method: 'get', path: '/api/accounts' },
  addAccount: { method: 'post', path: '/api/accounts' },
  changeAccount: { method: 'put', path: '/api/accounts/{account}' },
  listAgents: { method: 'get', path: '/api/agents' },
  addAgent: { method: 'post', path: '/api/agents' },
  listPersons: { method: 'get', path: '/api/books/{book}/persons' },
  addPerson: { method: 'post', path: '/api/books/{book}/persons' },
  readPerson: { method: 'get', path: '/api/books/{book}/persons/{person}' },
  correctIdentity: { method: 'put', path: '/api/books/{book}/persons/{person}/identity' },
  eraseIdentity: { method: 'delete', path: '/api/books/{book}/persons/{person}/identity' },
  addEntries: { method: 'post', path: '/api/entries' },
  listClassSessions: { method: 'get', path: '/api/class-sessions' },
  beginClassSession: { method: 'post', path: '/api/class-sessions' },
  readClassSession: { method: 'get', path: '/api/class-sessions/{session}' },
  endClassSession: { method: 'delete', path: '/api/class-sessions/{session}' },
  addClassPerson: { method: 'post', path: '/api/class-sessions/{session}/persons' },
  withdrawClassPerson: { method: 'delete', path: '/api/class-sessions/{session}/persons/{person}' },
  listProtocols: { method: 'get', path: '/api/protocols' },
  addProtocol: { method: 'post', path: '/api/protocols' },
  listProtocolChoices: { method: 'get', path: '/api/protocol-choices' },
  listEquipment: { method: 'get', path: '/api/equipment' },
  listGaugeReadings: { method: 'get', path: '/api/equipment/{gauge}/readings' },
  exportPerson: { method: 'get', path: '/api/books/{book}/persons/{person}/export' },
  importFile: { method: 'post', path: '/api/books/{book}/persons/{person}/import' },
} as const satisfies Record<string, { method: 'get' | 'post' | 'put' | 'delete'; path: string }>;

export type RouteName = keyof typeof PATHS;
