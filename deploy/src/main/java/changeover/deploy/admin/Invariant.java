package changeover.deploy.admin;

/**
 * Something that must be true of the data whatever happened to them.
 *
 * @param name as it is printed
 * @param table the rows it speaks of; the check is left out on data that have no such table yet
 * @param sql one row, seen by the owner over all businesses: how many rows were looked at, and how many of them are bad
 */
record Invariant(String name, String table, String sql) {}
