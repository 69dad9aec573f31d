package org.barreltally.people.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Synchronization;
import jakarta.transaction.TransactionSynchronizationRegistry;

/**
 * Does something once the transaction at hand is over. What is forgotten before that may be read
 * and remembered anew by others, who do not see the change yet.
 */
@ApplicationScoped
public class AfterTransaction {

  private final TransactionSynchronizationRegistry transactions;

  AfterTransaction(TransactionSynchronizationRegistry transactions) {
    this.transactions = transactions;
  }

  /** Runs it in this thread, however the transaction ends; at once where there is none. */
  public void run(Runnable work) {
    if (transactions.getTransactionKey() == null) {
      work.run();
      return;
    }
    transactions.registerInterposedSynchronization(
        new Synchronization() {
          @Override
          public void beforeCompletion() {}

          @Override
          public void afterCompletion(int status) {
            work.run();
          }
        });
  }
}
