export declare enum StoreType {
  Sled = 0,
  Sqlite = 1,
}
