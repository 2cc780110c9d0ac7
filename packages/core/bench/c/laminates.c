/* The kernel's job as plain C, for the benchmark: see ../against-c.ts. Reads a job from standard input, prints nanoseconds per laminate, without strength and with it,
   and sums of all it computed. */
#include <math.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

enum { ROW = 6, STRIDE = 55, STRESS_ROW = 13, LOAD = 6, TSAI_WU = 6 };

static int invert3(const double *m, double *out) {
  const double d1 = m[0];
  if (!(d1 > 0)) return 0;
  const double l21 = m[1] / d1, l31 = m[2] / d1;
  const double d2 = m[3] - l21 * m[1];
  if (!(d2 > 0)) return 0;
  const double e = m[4] - l31 * m[1];
  const double l32 = e / d2;
  const double d3 = m[5] - l31 * m[2] - l32 * e;
  if (!(d3 > 0)) return 0;
  const double k31 = l21 * l32 - l31, r2 = 1 / d2, r3 = 1 / d3, s31 = k31 * r3;
  const double o0 = 1 / d1 + l21 * l21 * r2 + k31 * s31;
  const double o1 = -l21 * r2 - l32 * s31;
  out[0] = o0; out[1] = o1; out[2] = s31; out[3] = r2 + l32 * l32 * r3; out[4] = -l32 * r3; out[5] = r3;
  return 1;
}

static void constants(const double *c, double scale, double *out) {
  out[0] = scale / c[0]; out[1] = scale / c[3]; out[2] = scale / c[5];
  out[3] = -c[1] / c[0]; out[4] = -c[1] / c[3]; out[5] = c[2] / c[0]; out[6] = c[4] / c[3];
}

static int laminate(const double *table, const int32_t *row, const double *t, int n, double *v) {
  double h = 0;
  for (int k = 0; k < n; k++) h += t[k];
  double A[6] = {0}, B[6] = {0}, D[6] = {0}, z = -h / 2;
  for (int k = 0; k < n; k++) {
    const double m = z + t[k] / 2, b = t[k] * m, d = b * m + t[k] * t[k] * t[k] / 12;
    const double *q = table + ROW * row[k];
    for (int i = 0; i < 6; i++) { A[i] += q[i] * t[k]; B[i] += q[i] * b; D[i] += q[i] * d; }
    z += t[k];
  }
  for (int i = 0; i < 6; i++) { v[i] = A[i]; v[6 + i] = B[i]; v[12 + i] = D[i]; }
  const double r = 1 / h, rr = r * r;
  double I[6], S[6], d[6];
  if (!invert3(A, I)) return 0;
  double b[3][3] = {{B[0] * r, B[1] * r, B[2] * r}, {B[1] * r, B[3] * r, B[4] * r}, {B[2] * r, B[4] * r, B[5] * r}};
  double im[3][3] = {{I[0], I[1], I[2]}, {I[1], I[3], I[4]}, {I[2], I[4], I[5]}};
  double X[3][3], Y[3][3], Dm[3][3] = {{D[0] * rr, D[1] * rr, D[2] * rr}, {D[1] * rr, D[3] * rr, D[4] * rr}, {D[2] * rr, D[4] * rr, D[5] * rr}};
  for (int i = 0; i < 3; i++) for (int j = 0; j < 3; j++) X[i][j] = im[i][0] * b[0][j] + im[i][1] * b[1][j] + im[i][2] * b[2][j];
  for (int i = 0, k = 0; i < 3; i++) for (int j = i; j < 3; j++, k++) S[k] = Dm[i][j] - (b[i][0] * X[0][j] + b[i][1] * X[1][j] + b[i][2] * X[2][j]);
  if (!invert3(S, d)) return 0;
  double dm[3][3] = {{d[0], d[1], d[2]}, {d[1], d[3], d[4]}, {d[2], d[4], d[5]}};
  for (int i = 0; i < 3; i++) for (int j = 0; j < 3; j++) Y[i][j] = X[i][0] * dm[0][j] + X[i][1] * dm[1][j] + X[i][2] * dm[2][j];
  double a[3][3];
  for (int i = 0, k = 0; i < 3; i++) for (int j = i; j < 3; j++, k++) {
    a[i][j] = im[i][j] + (Y[i][0] * X[j][0] + Y[i][1] * X[j][1] + Y[i][2] * X[j][2]); a[j][i] = a[i][j]; v[18 + k] = a[i][j];
  }
  for (int i = 0; i < 3; i++) for (int j = 0; j < 3; j++) v[24 + 3 * i + j] = -Y[i][j] * r;
  for (int k = 0; k < 6; k++) v[33 + k] = d[k] * rr;
  double norm = 0, inverseNorm = 0;
  for (int j = 0; j < 3; j++) {
    double p = 0, q = 0, u = 0, w = 0;
    const double am[3] = {j == 0 ? A[0] : j == 1 ? A[1] : A[2], j == 0 ? A[1] : j == 1 ? A[3] : A[4], j == 0 ? A[2] : j == 1 ? A[4] : A[5]};
    for (int i = 0; i < 3; i++) {
      p += fabs(am[i]) + fabs(b[i][j]); q += fabs(b[i][j]) + fabs(Dm[i][j]);
      u += fabs(a[i][j]) + fabs(Y[j][i]); w += fabs(Y[i][j]) + fabs(dm[i][j]);
    }
    norm = fmax(norm, fmax(p, q)); inverseNorm = fmax(inverseNorm, fmax(u, w));
  }
  constants(v + 18, 1 / h, v + 39);
  constants(v + 33, 12 / (h * h * h), v + 46);
  v[53] = h; v[54] = norm * inverseNorm;
  return 1;
}

/* Tsai-Wu strength ratio at one point: F = F1, F2, F11, F22, F66, F12; p turns laminate strain into ply stress. */
static double ratio(const double *p, const double *F, double x, double y, double xy) {
  const double s1 = p[0] * x + p[1] * y + p[2] * xy, s2 = p[3] * x + p[4] * y + p[5] * xy, s12 = p[6] * (y - x) + p[7] * xy;
  const double a = F[2] * s1 * s1 + F[3] * s2 * s2 + F[4] * s12 * s12 + 2 * F[5] * s1 * s2, b = F[0] * s1 + F[1] * s2;
  return 2 / (b + sqrt(b * b + 4 * a));
}

/* The least ratio of all faces under one load, and its face. */
static double weakest(const double *stress, const double *F, const int32_t *row, const double *t, int n, const double *v, const double *N, int32_t *where) {
  const double *a = v + 18, *b = v + 24, *d = v + 33;
  const double e0 = a[0] * N[0] + a[1] * N[1] + a[2] * N[2] + b[0] * N[3] + b[1] * N[4] + b[2] * N[5];
  const double e1 = a[1] * N[0] + a[3] * N[1] + a[4] * N[2] + b[3] * N[3] + b[4] * N[4] + b[5] * N[5];
  const double e2 = a[2] * N[0] + a[4] * N[1] + a[5] * N[2] + b[6] * N[3] + b[7] * N[4] + b[8] * N[5];
  const double k0 = b[0] * N[0] + b[3] * N[1] + b[6] * N[2] + d[0] * N[3] + d[1] * N[4] + d[2] * N[5];
  const double k1 = b[1] * N[0] + b[4] * N[1] + b[7] * N[2] + d[1] * N[3] + d[3] * N[4] + d[4] * N[5];
  const double k2 = b[2] * N[0] + b[5] * N[1] + b[8] * N[2] + d[2] * N[3] + d[4] * N[4] + d[5] * N[5];
  double z = -v[53] / 2, x = e0 + z * k0, y = e1 + z * k1, xy = e2 + z * k2, least = INFINITY;
  *where = -1;
  for (int k = 0; k < n; k++) {
    const double *p = stress + STRESS_ROW * row[k], *f = F + TSAI_WU * row[k];
    double R = ratio(p, f, x, y, xy);
    if (R < least) { least = R; *where = 2 * k; }
    z += t[k]; x = e0 + z * k0; y = e1 + z * k1; xy = e2 + z * k2;
    R = ratio(p, f, x, y, xy);
    if (R < least) { least = R; *where = 2 * k + 1; }
  }
  return least;
}

static double now(void) { struct timespec t; clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t); return t.tv_sec * 1e9 + t.tv_nsec; }

static int get(double *to, size_t n) { return fread(to, sizeof(double), n, stdin) == n; }

int main(int argc, char **argv) {
  if (argc < 5) return 1;
  const size_t n = atoi(argv[1]), plies = atoi(argv[2]), rows = atoi(argv[3]);
  const int repeats = atoi(argv[4]);
  double *table = malloc(sizeof(double) * ROW * rows), *stress = malloc(sizeof(double) * STRESS_ROW * rows), *F = malloc(sizeof(double) * TSAI_WU * rows);
  double *t = malloc(sizeof(double) * n * plies), *v = malloc(sizeof(double) * STRIDE * n), *R = malloc(sizeof(double) * n), load[LOAD];
  int32_t *row = malloc(sizeof(int32_t) * n * plies), *where = malloc(sizeof(int32_t) * n);
  if (!table || !stress || !F || !t || !v || !R || !row || !where) return 1;
  if (!get(table, ROW * rows) || !get(stress, STRESS_ROW * rows) || !get(F, TSAI_WU * rows) || !get(load, LOAD) || !get(t, n * plies)) return 1;
  if (fread(row, sizeof(int32_t), n * plies, stdin) != n * plies) return 1;
  double stiff = 1e300, strong = 1e300;
  for (int r = 0; r < repeats; r++) {
    double start = now();
    for (size_t k = 0; k < n; k++) if (!laminate(table, row + k * plies, t + k * plies, plies, v + STRIDE * k)) return 2;
    stiff = fmin(stiff, (now() - start) / n);
    start = now();
    for (size_t k = 0; k < n; k++) {
      const int32_t *own = row + k * plies;
      if (!laminate(table, own, t + k * plies, plies, v + STRIDE * k)) return 2;
      R[k] = weakest(stress, F, own, t + k * plies, plies, v + STRIDE * k, load, where + k);
    }
    strong = fmin(strong, (now() - start) / n);
  }
  double sum = 0, ratios = 0, faces = 0;
  for (size_t i = 0; i < STRIDE * n; i++) sum += fabs(v[i]);
  for (size_t k = 0; k < n; k++) { ratios += R[k]; faces += where[k]; }
  printf("%.3f %.3f %.17g %.17g %.17g\n", stiff, strong, sum, ratios, faces);
  return 0;
}
