package org.barreltally.measure;

/** The least %Tc (560 nm, 10 mm cell, glycerol = 100) of a color class; the class begins at it. */
public record ColorLimit(ColorClass colorClass, double transmittanceMin) {}
