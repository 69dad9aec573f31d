package org.barreltally.cost;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.util.List;
import org.barreltally.start.OwnDatabase;

/** A book that no other test writes in. */
public class OwnBook implements QuarkusTestProfile {

  @Override
  public List<TestResourceEntry> testResources() {
    return List.of(new TestResourceEntry(OwnDatabase.class));
  }

  @Override
  public boolean disableGlobalTestResources() {
    return true;
  }
}
