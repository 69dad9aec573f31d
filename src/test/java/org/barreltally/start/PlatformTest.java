package org.barreltally.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlatformTest {

  @ParameterizedTest
  @CsvSource({
    "Linux, amd64, postgres-linux-x86_64.txz",
    "Linux, aarch64, postgres-linux-arm_64.txz",
    "Mac OS X, x86_64, postgres-darwin-x86_64.txz",
    "Mac OS X, aarch64, postgres-darwin-arm_64.txz",
    "Windows 11, amd64, postgres-windows-x86_64.txz",
    "Windows Server 2022, aarch64, postgres-windows-x86_64.txz",
  })
  void every_supported_system_has_its_archive_on_board(String os, String arch, String archive) {
    assertEquals(archive, Platform.of(os, arch).archive());
    assertNotNull(getClass().getClassLoader().getResource(archive));
  }

  @ParameterizedTest
  @CsvSource({"SunOS, sparc", "FreeBSD, amd64", "Linux, riscv64", "Linux, x86"})
  void another_system_is_sent_to_an_outside_database(String os, String arch) {
    CannotStart refusal = assertThrows(CannotStart.class, () -> Platform.of(os, arch));
    assertTrue(
        refusal.getMessage().startsWith("There is no embedded PostgreSQL for " + os),
        refusal.getMessage());
  }
}
