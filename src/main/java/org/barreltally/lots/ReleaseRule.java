package org.barreltally.lots;

/**
 * May say no to the release of a held lot. Implemented where a hold has a further cause, because
 * lots do not know it. Asked in the releasing transaction, with the lot locked.
 */
public interface ReleaseRule {

  /**
   * @throws org.barreltally.refusal.Refusal if the lot must stay held
   */
  void releasing(String lot);
}
