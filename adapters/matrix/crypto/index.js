"use strict";
// matrix-bot-sdk requires this package when it is imported and reads only this
// enum then. Encrypted rooms are not supported yet, so nothing else is here: a
// use of any other name fails at once instead of sending plain text.
exports.StoreType = Object.freeze({ Sled: 0, Sqlite: 1 });
