package org.warmvat.design.heating;

/** Where the backup's heat comes from. */
public enum BackupSource {
    /** Electricity: an element or a heat pump. */
    ELECTRIC,
    /** The digester's own gas. */
    OWN_GAS,
    /** Any bought fuel. */
    FUEL
}
