/**
 * Errands: work that takes a while, asked for, left, and found again. It is done after the answer,
 * one at a time, as whoever asked; how far it is can be read, and what came of it is kept for two
 * days. Capabilities say what can be asked ({@link org.barreltally.errands.ErrandKind}).
 */
package org.barreltally.errands;
