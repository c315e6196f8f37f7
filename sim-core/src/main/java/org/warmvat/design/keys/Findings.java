package org.warmvat.design.keys;

/** What reading a block of keys finds beside the record. */
public interface Findings {

    /** Whether a key is known to be faulty already; it then counts as absent. */
    default boolean faulty(String path) {
        return false;
    }

    /** A key is missing. */
    void missing(String path, String reason);

    /** A key is wrong. */
    void wrong(Refused.Fault fault);

    /** A key is absent and a default stands for it. */
    default void assumed(String path, String words) {}

    /** A key is there and has no effect. */
    default void idle(String path, String reason) {}

    /** Finds nothing worth a word but what is missing or wrong, which it throws. */
    static Findings strict() {
        return new Findings() {
            @Override
            public void missing(String path, String reason) {
                throw new Refused(path, "is missing" + (reason.isEmpty() ? "" : " (" + reason + ")"));
            }

            @Override
            public void wrong(Refused.Fault fault) {
                throw new Refused(java.util.List.of(fault));
            }
        };
    }
}
