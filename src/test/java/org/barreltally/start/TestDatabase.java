package org.barreltally.start;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.common.QuarkusTestResourceLifecycleManager;
import java.util.Map;

/**
 * Gives every {@code @QuarkusTest} the test server with the same two roles as in production. The
 * annotation here is enough: an unrestricted test resource serves all tests of the module.
 */
@QuarkusTestResource(TestDatabase.class)
public class TestDatabase implements QuarkusTestResourceLifecycleManager {

  @Override
  public Map<String, String> start() {
    DatabaseLogin owner = TestServer.owner();
    return ApplicationProperties.database(owner, new DatabaseRoles(owner).ensure());
  }

  /** Leaves the server running for the next profile's tests; it goes when the test run ends. */
  @Override
  public void stop() {}
}
