package org.barreltally.web.problem;

/** The web layer itself said no, before any rule of the trade was asked. */
public final class Refused extends RuntimeException {

  private final transient Problem problem;

  public Refused(Problem problem) {
    super(problem.code(), null, false, false);
    this.problem = problem;
  }

  Problem problem() {
    return problem;
  }
}
