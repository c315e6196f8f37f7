package org.warmvat.network.meter;

/**
 * A line of the results, as the part that makes it names it.
 *
 * @param path where it stands in {@code summary.json}, an object's key before its own with a stroke between:
 *     {@code electricity_kwh/mixer}, and where each of many things has such an object with a name of the user's between them:
 *     {@code gas_uses/cooker/met_kwh}; unit in the name
 * @param name trade name, as in tables
 * @param unit its unit
 */
public record Line(String path, String name, Unit unit) {

    /** The object that holds it; empty for one that stands alone. */
    public String group() {
        return path.substring(0, Math.max(0, path.indexOf('/')));
    }

    /** Its key in that object, or in that of the thing. */
    public String key() {
        return path.substring(path.lastIndexOf('/') + 1);
    }

    /** The thing of the group that it tells of, by the user's name, which may hold strokes itself; empty for none. */
    public String thing() {
        int first = path.indexOf('/');
        int last = path.lastIndexOf('/');
        return first < last ? path.substring(first + 1, last) : "";
    }

    /** Its column in a table: a group's unit goes to the end, {@code stored_kwh/slurry} becoming {@code stored_slurry_kwh}. */
    public String column() {
        String group = group();
        if (group.isEmpty()) {
            return path;
        }
        if (!thing().isEmpty()) {
            return group + "_" + thing() + "_" + key();
        }
        int unitAt = group.lastIndexOf('_');
        return unitAt < 0 ? group + "_" + key() : group.substring(0, unitAt) + "_" + key() + group.substring(unitAt);
    }
}
