package org.barreltally.recall.rest;

/** Examples for the description of the interface. */
final class RecallExamples {

  static final String RECALL =
      """
      {"id": "01980f3a-6a3e-7b52-8f4e-3d1f6a1b2c3d"}
      """;

  private RecallExamples() {}
}
