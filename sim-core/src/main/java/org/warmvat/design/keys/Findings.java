package org.warmvat.design.keys;

/** What reading a block of keys finds beside the record. */
public interface Findings {

    /** Whether a key is known to be faulty already; it then counts as absent. */
    boolean faulty(String path);

    /** A key is missing. */
    void missing(String path, String reason);

    /** A key is wrong. */
    void wrong(Refused.Fault fault);

    /** A key is absent and a default stands for it. */
    void assumed(String path, String words);

    /** A key is there and has no effect. */
    void idle(String path, String reason);

    /** Finds nothing worth a word but what is wrong, which it throws. */
    static Findings strict() {
        return new Findings() {
            @Override
            public boolean faulty(String path) {
                return false;
            }

            @Override
            public void missing(String path, String reason) {
                throw new Refused(path, "is missing" + (reason.isEmpty() ? "" : " (" + reason + ")"));
            }

            @Override
            public void wrong(Refused.Fault fault) {
                throw new Refused(java.util.List.of(fault));
            }

            @Override
            public void assumed(String path, String words) {
                // defaults are what is asked for
            }

            @Override
            public void idle(String path, String reason) {
                // without effect
            }
        };
    }
}
