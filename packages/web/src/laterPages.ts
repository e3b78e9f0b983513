/** Pages that the bedside does not need: fetched after it, together. */

export { CardPage } from './card/CardPage.js';
export { AmendPage } from './chart/AmendPage.js';
export { PersonPage } from './chart/PersonPage.js';
export { ToCountersignPage } from './chart/ToCountersignPage.js';
export { ClassRoutes } from './class/ClassRoutes.js';
export { DiaryPage } from './diary/DiaryPage.js';
export { EquipmentPage } from './equipment/EquipmentPage.js';
export { GaugePage } from './equipment/GaugePage.js';
export { FactsPage } from './facts/FactsPage.js';
export { HandOverPage } from './handover/HandOverPage.js';
export { AddPersonPage } from './people/AddPersonPage.js';
export { CorrectIdentityPage } from './people/CorrectIdentityPage.js';
export { SettingsPage } from './preferences/SettingsPage.js';
export { ProtocolPage } from './protocol/ProtocolPage.js';
export { VersionPage } from './protocol/VersionPage.js';
export { MarkPage } from './second/MarkPage.js';
export { AccountsPage } from './signIn/AccountsPage.js';
export { OwnAccountPage } from './signIn/OwnAccountPage.js';
export { TrendPage } from './trend/TrendPage.js';
