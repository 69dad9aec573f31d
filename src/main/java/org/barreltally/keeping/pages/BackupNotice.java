package org.barreltally.keeping.pages;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import org.barreltally.keeping.BackupAge;
import org.barreltally.web.StartPageNotice;

/** Reminds of backups on the start page. */
@ApplicationScoped
class BackupNotice implements StartPageNotice {

  private final BackupAge age;

  BackupNotice(BackupAge age) {
    this.age = age;
  }

  @Override
  public Optional<String> sentence() {
    return age.warning();
  }
}
