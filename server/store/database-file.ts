/** The database's name in the data folder. */
export const DATABASE_FILE = "heelstrip.db";
