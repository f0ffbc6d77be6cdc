/* Two-step nitrification with CVODE (BDF, dense): reads plain numbers, prints one JSON line per tolerance.
   Input: 13 parameters, 6 start values, seconds per tolerance, number of times n, then n rows of time and 6 values. */
#include <cvode/cvode.h>
#include <math.h>
#include <nvector/nvector_serial.h>
#include <stdio.h>
#include <stdlib.h>
#include <sundials/sundials_version.h>
#include <sunlinsol/sunlinsol_dense.h>
#include <sunmatrix/sunmatrix_dense.h>
#include <time.h>

enum { STATES = 6, MOST_TIMES = 200 };
enum { muA, KA, KOA, YA, bA, muN, KN, KON, YN, bN, load, kLa, O2sat, PARAMETERS };

static double p[PARAMETERS], start[STATES], t_out[MOST_TIMES], reference[MOST_TIMES][STATES];
static int count;

static int slope(realtype t, N_Vector state, N_Vector out, void *data) {
  (void)t;
  (void)data;
  const double *y = N_VGetArrayPointer(state);
  double *d = N_VGetArrayPointer(out);
  const double rA = p[muA] * y[0] / (p[KA] + y[0]) * y[5] / (p[KOA] + y[5]) * y[3] / p[YA];
  const double rN = p[muN] * y[1] / (p[KN] + y[1]) * y[5] / (p[KON] + y[5]) * y[4] / p[YN];
  d[0] = p[load] - rA;
  d[1] = rA - rN;
  d[2] = rN;
  d[3] = p[YA] * rA - p[bA] * y[3];
  d[4] = p[YN] * rN - p[bN] * y[4];
  d[5] = p[kLa] * (p[O2sat] - y[5]) - 3.43 * rA - 1.14 * rN;
  return 0;
}

/* Solves once; returns the largest relative difference from the reference, or a negative number on failure. */
static double solve(SUNContext context, double rtol, long *evaluations) {
  N_Vector y = N_VNew_Serial(STATES, context);
  for (int i = 0; i < STATES; i++) NV_Ith_S(y, i) = start[i];
  void *memory = CVodeCreate(CV_BDF, context);
  SUNMatrix matrix = SUNDenseMatrix(STATES, STATES, context);
  SUNLinearSolver solver = SUNLinSol_Dense(y, matrix, context);
  double error = 0;
  long for_jacobian = 0;
  CVodeInit(memory, slope, 0.0, y);
  CVodeSStolerances(memory, rtol, rtol * 1e-4);
  CVodeSetLinearSolver(memory, solver, matrix);
  CVodeSetMaxNumSteps(memory, 1000000);
  for (int k = 0; k < count && error >= 0; k++) {
    realtype t;
    if (CVode(memory, t_out[k], y, &t, CV_NORMAL) < 0) {
      error = -1;
      break;
    }
    for (int i = 0; i < STATES; i++) error = fmax(error, fabs(NV_Ith_S(y, i) / reference[k][i] - 1));
  }
  CVodeGetNumRhsEvals(memory, evaluations);
  CVodeGetNumLinRhsEvals(memory, &for_jacobian);
  *evaluations += for_jacobian;
  CVodeFree(&memory);
  SUNLinSolFree(solver);
  SUNMatDestroy(matrix);
  N_VDestroy(y);
  return error;
}

static double now(void) {
  struct timespec t;
  clock_gettime(CLOCK_MONOTONIC, &t);
  return t.tv_sec + 1e-9 * t.tv_nsec;
}

static double number(void) {
  double value;
  if (scanf("%lf", &value) != 1) exit(2);
  return value;
}

int main(void) {
  for (int i = 0; i < PARAMETERS; i++) p[i] = number();
  for (int i = 0; i < STATES; i++) start[i] = number();
  const double seconds = number();
  count = (int)number();
  if (count < 1 || count > MOST_TIMES) return 2;
  for (int k = 0; k < count; k++) {
    t_out[k] = number();
    for (int i = 0; i < STATES; i++) reference[k][i] = number();
  }
  SUNContext context;
  SUNContext_Create(NULL, &context);
  for (int exponent = 4; exponent <= 20; exponent++) {
    const double rtol = pow(10.0, -exponent / 2.0);
    double best = 1e300, error = 0;
    long evaluations = 0;
    const double end = now() + seconds;
    do {
      const double before = now();
      error = solve(context, rtol, &evaluations);
      best = fmin(best, now() - before);
    } while (now() < end);
    if (error < 0) continue;
    printf("{\"name\": \"SUNDIALS %s CVODE BDF\", \"tolerance\": %g, \"error\": %g, \"seconds\": %g, \"evaluations\": %ld}\n",
           SUNDIALS_VERSION, rtol, error, best, evaluations);
  }
  SUNContext_Free(&context);
  return 0;
}
