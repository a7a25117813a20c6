"use strict";
// matrix-bot-sdk requires this package when it is imported and reads only this
// enum then. Encryption is done beside the SDK, in ../keys, where keys are kept
// so that a crash loses none; a use of any other name fails at once instead of
// sending plain text.
exports.StoreType = Object.freeze({ Sled: 0, Sqlite: 1 });
