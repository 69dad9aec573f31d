package org.barreltally;

import io.quarkus.test.junit.callback.QuarkusTestBeforeClassCallback;
import io.restassured.RestAssured;
import io.restassured.config.LogConfig;

/**
 * What was asked and answered is told when a test fails, as it was sent: laying it out prettily,
 * which Quarkus asks of REST Assured, is done for every answer of every test and takes longer than
 * the answer. Looks into answers are quick ones too.
 */
public class PlainTelling implements QuarkusTestBeforeClassCallback {

  @Override
  public void beforeClass(Class<?> testClass) {
    RestAssured.config =
        RestAssured.config()
            .logConfig(
                LogConfig.logConfig()
                    .enableLoggingOfRequestAndResponseIfValidationFails()
                    .enablePrettyPrinting(false));
    RestAssured.replaceFiltersWith(new QuickReading());
  }
}
