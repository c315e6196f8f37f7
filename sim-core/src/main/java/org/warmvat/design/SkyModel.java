package org.warmvat.design;

/** How diffuse light of the sky is laid on the collector's plane (equation 4.4). */
public enum SkyModel {
    /** Alike from everywhere. */
    ISOTROPIC,
    /** Hay and Davies (1980). */
    HAY_DAVIES,
    /** Perez et al. (1990). */
    PEREZ
}
