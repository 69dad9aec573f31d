package org.barreltally.sugarbush.boiling.rest;

/** Why an entry is taken back. */
public record Because(String reason) {}
