#!/usr/bin/env python3
"""Closed-form check values for coax, wires, parallel lines, thin antennas,
ground reflection, coils, matching and exposure.  Prints JSON rows on standard output.

Needs mpmath (all special functions are evaluated at 40 digits).

Every record: id, quantity, inputs, value, unit, tolerance, source, status.
Complex values are written {"re":..,"im":..}; numbers carry 15 significant
digits (as strings rounded from 40-digit arithmetic, stored as JSON numbers).

Conventions: e^{+j w t}, Z = R + jX, X > 0 inductive.  log = natural unless log10.
"""
import json
import sys
import mpmath as mp
mp.mp.dps = 40
mpf, mpc, pi, sqrt, ln, j = mp.mpf, mp.mpc, mp.pi, mp.sqrt, mp.log, mp.mpc(0, 1)

REC = []
STATUS = "computed here (script)"


def num(x):
    if isinstance(x, mp.mpc):
        return {"re": num(x.real), "im": num(x.imag)}
    if isinstance(x, (list, tuple)):
        return [num(v) for v in x]
    if isinstance(x, dict):
        return {k: num(v) for k, v in x.items()}
    if isinstance(x, (mp.mpf, float)) or type(x).__name__ == "constant":
        return float(mp.nstr(mpf(x), 15))
    return x


def add(id, quantity, inputs, value, unit, tol, source):
    REC.append(dict(id=id, quantity=quantity, inputs=num(inputs), value=num(value),
                    unit=unit, tolerance=tol, source=source, status=STATUS))


# --------------------------------------------------------------------------
# constants
c0 = mpf(299792458)
mu0_2019 = mpf('1.25663706212e-6')          # CODATA 2018 value
mu0 = 4 * pi * mpf('1e-7')                   # pre-2019 exact value, used below
eps0 = 1 / (mu0 * c0 ** 2)
eta0 = mu0 * c0                              # 376.730313461...
RT = "1e-9 relative"

add("const.eta0.classic", "wave impedance of free space with mu0 = 4*pi*1e-7 H/m", {}, eta0, "ohm", RT,
    "definition mu0*c; pre-2019 SI")
add("const.eta0.codata2018", "wave impedance of free space, CODATA 2018 mu0", {"mu0": mu0_2019}, mu0_2019 * c0,
    "ohm", "1e-9 relative", "CODATA 2018: 376.730313668(57) ohm")
add("const.coax.k_ln", "factor in Z0 = K*ln(D/d)/sqrt(eps_r)", {}, eta0 / (2 * pi), "ohm", RT,
    "eta0/(2 pi) = 2e-7*c exactly (classic mu0)")
add("const.coax.k_log10", "factor in Z0 = K10*log10(D/d)/sqrt(eps_r) (often rounded to 138)", {},
    eta0 / (2 * pi) * ln(10), "ohm", RT, "eta0/(2 pi)*ln 10")
add("const.pair.k_acosh", "factor in Z0 = K*acosh(D/d)/sqrt(eps_r) of a two-wire line", {}, eta0 / pi, "ohm", RT,
    "eta0/pi")
add("const.pair.k_log10", "factor in Z0 ~ K10*log10(2D/d) (often rounded to 276)", {}, eta0 / pi * ln(10), "ohm", RT,
    "eta0/pi*ln 10")
add("const.30_exact", "factor eta0/(4 pi) that textbooks round to 30 ohm", {}, eta0 / (4 * pi), "ohm", RT,
    "eta0/(4 pi) = 1e-7*c")

K = eta0 / (2 * pi)


def cname(z):
    z = mpc(z)
    return "%g%+gj" % (float(z.real), float(z.imag))


# --------------------------------------------------------------------------
# 1. coax
def z0_coax(x, er=1):
    return K * ln(x) / sqrt(mpf(er))


x_att = mp.findroot(lambda x: ln(x) - 1 - 1 / x, mpf('3.59'))
add("coax.opt.attenuation.ratio", "D/d of least conductor attenuation, D fixed, both conductors alike",
    {"equation": "ln x = 1 + 1/x"}, x_att, "1", RT, "stationary point of (1+x)/ln x")
for er, tag in ((1, "air"), (mpf('2.25'), "eps2.25"), (mpf('2.3'), "eps2.30"), (mpf('2.1'), "eps2.10"),
                (mpf('1.5'), "eps1.50"), (mpf('1.1'), "eps1.10")):
    add("coax.opt.attenuation.z0." + tag, "Z0 at that ratio, uniform dielectric", {"eps_r": er}, z0_coax(x_att, er),
        "ohm", RT, "59.9584916*ln(3.5911)/sqrt(eps_r)")
add("coax.opt.voltage.ratio", "D/d of greatest voltage before the field at the inner conductor reaches a given value (D fixed)",
    {"equation": "ln x = 1"}, mp.e, "1", RT, "stationary point of (ln x)/x")
add("coax.opt.voltage.z0.air", "Z0 there, air", {}, z0_coax(mp.e), "ohm", RT, "59.9584916")
add("coax.opt.power.ratio", "D/d of greatest peak power at a given field (D fixed)", {"equation": "ln x = 1/2"},
    sqrt(mp.e), "1", RT, "stationary point of (ln x)/x^2")
add("coax.opt.power.z0.air", "Z0 there, air", {}, z0_coax(sqrt(mp.e)), "ohm", RT, "29.9792458")
add("coax.compromise.arith", "arithmetic mean of 30 and 77 ohm", {}, mpf(107) / 2, "ohm", "exact", "arithmetic")
add("coax.compromise.geom", "geometric mean of 30 and 77 ohm", {}, sqrt(mpf(30) * 77), "ohm", RT, "arithmetic")
for z in (25, 30, 35, 40, 50, 52, 60, 70, 75, 77, 80, 93, 100, 125):
    x = mp.e ** (mpf(z) / K)
    add(f"coax.att_ratio.air.{z}", "conductor attenuation relative to the least possible, air, same D",
        {"Z0": z, "D/d": x}, ((1 + x) / ln(x)) / ((1 + x_att) / ln(x_att)), "1", RT, "(1+x)/ln x, normalised")
    xd = mp.e ** (mpf(z) * sqrt(mpf('2.25')) / K)
    add(f"coax.att_ratio.eps2.25.{z}", "the same, filled with eps_r = 2.25", {"Z0": z, "eps_r": mpf('2.25'), "D/d": xd},
        ((1 + xd) / ln(xd)) / ((1 + x_att) / ln(x_att)), "1", RT, "(1+x)/ln x, normalised")
    add(f"coax.power_ratio.air.{z}", "peak power at breakdown relative to the greatest possible, air, same D",
        {"Z0": z, "D/d": x}, (ln(x) / x ** 2) / (mpf(1) / 2 / mp.e), "1", RT, "(ln x)/x^2, normalised")
    add(f"coax.voltage_ratio.air.{z}", "breakdown voltage relative to the greatest possible, air, same D",
        {"Z0": z, "D/d": x}, (ln(x) / x) * mp.e, "1", RT, "(ln x)/x, normalised")
for r in ('0.5', '0.75', '1.28036', '2', '3', '5', '10'):
    rr = mpf(r)
    x = mp.findroot(lambda x: ln(x) - 1 - rr / x, mpf(4))
    add(f"coax.opt.unequal.{r}", "D/d of least attenuation when the outer conductor's surface resistance is r times the inner's",
        {"r = Rs_outer/Rs_inner": rr, "equation": "ln x = 1 + r/x"},
        {"D/d": x, "Z0_air_ohm": z0_coax(x), "Z0_eps2.25_ohm": z0_coax(x, mpf('2.25'))}, "1, ohm", RT,
        "stationary point of (r+x)/ln x; r = 1.28036 is Cu 58.0 MS/m inside Al 35.38 MS/m")

# peak power of air coax at 3 MV/m
for D, z in ((mpf(10), 50), (mpf(10), 75), (mpf('7.25'), 50), (mpf(25), 50)):
    x = mp.e ** (mpf(z) / K)
    a = D / 2 / x * mpf('1e-3')
    E = mpf('3e6')
    add(f"coax.peakpower.D{float(D)}.Z{z}", "peak-envelope power of a matched air line when the inner surface peaks at 3 MV/m (no safety margin)",
        {"D_mm": D, "Z0": z, "E_peak_V/m": E},
        {"P_W": pi * E ** 2 * a ** 2 * ln(x) / eta0, "V_peak_V": E * a * ln(x)}, "W, V", RT,
        "P = pi E^2 a^2 ln(b/a)/eta0, V = E a ln(b/a)")

# TE11 cutoff
def te11(x):
    f = lambda u: mp.besselj(1, u, 1) * mp.bessely(1, u * x, 1) - mp.besselj(1, u * x, 1) * mp.bessely(1, u, 1)
    u0 = 2 / (1 + x)
    return mp.findroot(f, (u0 * mpf('0.98'), u0 * mpf('1.03')))


for xs in ('1.1', '1.5', '2', '2.302449', '3', '3.25', '3.591121', '4', '5', '7', '10', '20'):
    x = mpf(xs)
    u = te11(x)
    add(f"coax.te11.{xs}", "TE11 cut-off, exact root of J1'(u)Y1'(ux) - J1'(ux)Y1'(u) = 0, u = k_c*d/2",
        {"D/d": x}, {"kc*d/2": u, "kc*(d+D)/4": u * (1 + x) / 2, "fc_exact/fc_approx": u * (1 + x) / 2}, "1", RT,
        "approximation: lambda_c = pi*(D+d)/2, i.e. kc*(d+D)/4 = 1")
for name, d, D, er in (("RG-213 size", mpf('2.26'), mpf('7.25'), mpf('2.25')), ("RG-58 size", mpf('0.90'), mpf('2.95'), mpf('2.25')),
                       ("7 mm air line", mpf('3.04'), mpf('7.00'), 1)):
    u = te11(D / d)
    fc = u / (d / 2 * mpf('1e-3')) * c0 / (2 * pi) / sqrt(mpf(er))
    fa = c0 / sqrt(mpf(er)) / (pi * (D + d) / 2 * mpf('1e-3'))
    add("coax.te11.f." + name.replace(" ", "_"), "TE11 cut-off frequency", {"d_mm": d, "D_mm": D, "eps_r": er},
        {"exact_GHz": fc / mpf('1e9'), "approx_GHz": fa / mpf('1e9')}, "GHz", RT, "as above")

# skin depth
for mat, s in (("Cu", mpf('5.8e7')), ("Al", mpf('3.538e7')), ("Ag", mpf('6.17e7')), ("brass", mpf('1.6e7'))):
    for f in ('0.1', '1', '1.8', '3.5', '7', '14', '28', '50', '144', '432'):
        d = sqrt(2 / (2 * pi * mpf(f) * mpf('1e6') * mu0 * s))
        add(f"skin.{mat}.{f}MHz", "skin depth and surface resistance", {"sigma_S/m": s, "f_MHz": mpf(f)},
            {"delta_um": d * mpf('1e6'), "Rs_mohm_per_square": mpf('1e3') / (s * d)}, "um, mohm", RT,
            "delta = sqrt(2/(w mu0 sigma)), Rs = 1/(sigma delta)")

# round wire, exact
def wire_ratio(rd):
    """Zint / Rdc of a solid round wire, rd = radius/skin depth."""
    k = (1 - j) * rd            # k*a, with k = (1-j)/delta
    return k / 2 * mp.besselj(0, k) / mp.besselj(1, k)


for rd in ('0.25', '0.5', '0.75', '1', '1.25', '1.5', '2', '2.5', '3', '4', '5', '7.5', '10', '20', '50', '100'):
    r = mpf(rd)
    z = wire_ratio(r)
    add(f"wire.solid.{rd}", "internal impedance of a solid round wire over its dc resistance, exact",
        {"radius/delta": r},
        {"R/Rdc": z.real, "Xint/Rdc": z.imag, "HF_estimate_r/(2d)": r / 2, "HF_estimate_r/(2d)+1/4": r / 2 + mpf(1) / 4,
         "Lint/(mu0/8pi)": z.imag / (r ** 2 / 4)}, "1", RT,
        "Z/Rdc = (ka/2) J0(ka)/J1(ka), k = (1-j)/delta")
for f in ('1.8', '3.6', '7.1', '14.2', '28.5', '145'):
    for dmm in ('1.0', '2.0', '2.26'):
        s = mpf('5.8e7'); a = mpf(dmm) / 2 * mpf('1e-3')
        de = sqrt(2 / (2 * pi * mpf(f) * mpf('1e6') * mu0 * s))
        R = (wire_ratio(a / de) / (s * pi * a ** 2))
        add(f"wire.cu.{dmm}mm.{f}MHz", "ac resistance and internal reactance of a solid copper wire", {"d_mm": mpf(dmm), "f_MHz": mpf(f), "sigma": s},
            {"R_ohm_per_m": R.real, "Xint_ohm_per_m": R.imag}, "ohm/m", RT, "exact Bessel form")

# tube, current on the outside
def tube_Z(a, b, de, s):
    """internal impedance per metre of a tube, radii a<b, return path outside (no field in the bore)."""
    g = (1 + j) / de
    I0, I1, K0, K1 = (lambda x: mp.besseli(0, x)), (lambda x: mp.besseli(1, x)), (lambda x: mp.besselk(0, x)), (lambda x: mp.besselk(1, x))
    return g / (2 * pi * b * s) * (I0(g * b) * K1(g * a) + K0(g * b) * I1(g * a)) / (I1(g * b) * K1(g * a) - K1(g * b) * I1(g * a))


for bd in ('10', '50'):
    for td in ('0.25', '0.5', '1', '1.5', '1.5708', '2', '3', '5'):
        b = mpf(bd); a = b - mpf(td)
        z = tube_Z(a, b, mpf(1), mpf(1)) * (2 * pi * b)      # in units of Rs (delta=sigma=1)
        pl = (1 + j) * mp.coth((1 + j) * mpf(td))
        add(f"wire.tube.b{bd}.t{td}", "internal impedance of a tube (return outside) relative to Rs/(2 pi b)",
            {"outer radius/delta": b, "wall/delta": mpf(td)},
            {"R_rel": z.real, "X_rel": z.imag, "flat_sheet_R_rel": pl.real, "flat_sheet_X_rel": pl.imag}, "1", RT,
            "exact I/K Bessel form; flat sheet = (1+j) coth((1+j) t/delta)")

# clad wire: copper over steel (two layers), exact
def clad_Z(a, b, de1, s1, mu1, de2, s2, mu2):
    """core radius a (1), cladding a..b (2); returns Zint per metre."""
    with mp.workdps(120):
        return _clad_Z(a, b, de1, s1, mu1, de2, s2, mu2)


def _clad_Z(a, b, de1, s1, mu1, de2, s2, mu2):
    k1 = (1 - j) / de1; k2 = (1 - j) / de2
    J, Y = mp.besselj, mp.bessely
    # E_z = A J0(k1 r) in core ; C J0(k2 r)+D Y0(k2 r) in cladding ; H_phi ~ (1/(jw mu)) dE/dr
    e1 = J(0, k1 * a); h1 = -k1 * J(1, k1 * a) / mu1
    m11, m12, m21, m22 = J(0, k2 * a), Y(0, k2 * a), -k2 * J(1, k2 * a) / mu2, -k2 * Y(1, k2 * a) / mu2
    C = e1 * m22 - m12 * h1          # Cramer's rule (common determinant cancels in Z)
    D = m11 * h1 - m21 * e1
    E = C * J(0, k2 * b) + D * Y(0, k2 * b)
    dE = -k2 * (C * J(1, k2 * b) + D * Y(1, k2 * b))
    w = 2 / (mu2 * s2 * de2 ** 2)                       # omega
    H = dE / (j * w * mu2)
    return E / (2 * pi * b * H)


s_cu, s_st, mur = mpf('5.8e7'), mpf('5.8e6'), mpf(200)
for f in ('0.1', '0.5', '1.8', '3.6', '7.1', '14.2', '28.5', '145'):
    w = 2 * pi * mpf(f) * mpf('1e6')
    b = mpf('0.512e-3'); a = b * (1 - mpf('0.065'))      # 1.024 mm wire, copper 6.5 % of the radius
    d1 = sqrt(2 / (w * mu0 * mur * s_st)); d2 = sqrt(2 / (w * mu0 * s_cu))
    Z = clad_Z(a, b, d1, s_st, mu0 * mur, d2, s_cu, mu0)
    Zcu = wire_ratio(b / d2) / (s_cu * pi * b ** 2)
    add(f"wire.ccs.1.024mm.{f}MHz", "copper-clad steel wire, exact two-layer solution, against solid copper of the same diameter",
        {"d_mm": mpf('1.024'), "copper_thickness_um": (b - a) * mpf('1e6'), "sigma_Cu": s_cu, "sigma_steel": s_st, "mu_r_steel": mur, "f_MHz": mpf(f)},
        {"R_ccs_ohm_per_m": Z.real, "X_ccs_ohm_per_m": Z.imag, "R_solid_Cu_ohm_per_m": Zcu.real, "ratio": Z.real / Zcu.real},
        "ohm/m", RT, "two-layer Bessel solution; steel constants are an assumption (10 % IACS, mu_r 200)")

# complex Z0 and gamma of a solid coaxial line (smooth solid conductors)
def coax_line(f, d, D, s, er, tand):
    w = 2 * pi * f
    de = sqrt(2 / (w * mu0 * s)); k = (1 - j) / de
    a, b = d / 2, D / 2
    Zi = k / (2 * pi * a * s) * mp.besselj(0, k * a) / mp.besselj(1, k * a)
    g = (1 + j) / de
    Zo = g / (2 * pi * b * s) * mp.besselk(0, g * b) / mp.besselk(1, g * b)   # infinitely thick outer
    L = mu0 / (2 * pi) * ln(b / a)
    C = 2 * pi * eps0 * er / ln(b / a)
    Z = Zi + Zo + j * w * L
    Y = j * w * C * (1 - j * tand)
    gam = sqrt(Z * Y)
    if gam.real < 0:
        gam = -gam
    return sqrt(Z / Y), gam, Zi + Zo


for f in ('1e3', '1e4', '1e5', '1e6', '1.8e6', '3.6e6', '7.1e6', '1.42e7', '2.85e7', '1e8', '1.45e8', '4.35e8', '1e9'):
    z, g, zs = coax_line(mpf(f), mpf('2.26e-3'), mpf('7.25e-3'), mpf('5.8e7'), mpf('2.25'), mpf('2e-4'))
    add(f"coax.line.2.26-7.25.f{f}", "characteristic impedance and propagation of an ideal solid coaxial line, exact conductor terms",
        {"f_Hz": mpf(f), "d_mm": mpf('2.26'), "D_mm": mpf('7.25'), "sigma": mpf('5.8e7'), "eps_r": mpf('2.25'), "tan_delta": mpf('2e-4'),
         "outer": "infinitely thick, smooth; inner solid, smooth"},
        {"Z0": z, "alpha_dB_per_100m": g.real * 100 * 20 / ln(10), "beta_rad_per_m": g.imag, "VF": 2 * pi * mpf(f) / g.imag / c0,
         "Zs_ohm_per_m": zs}, "ohm, dB/100 m, rad/m", RT,
        "gamma = sqrt((Zi+Zo+jwL)(jwC(1-j tan d))); real strands and braid are lossier")
# a pure RLGC example, numbers only
for f in ('60', '1e3', '1e4', '1e5', '1e6', '1e7', '1e8'):
    w = 2 * pi * mpf(f)
    R, L, G, C = mpf('0.010'), mpf('250e-9'), mpf('1e-9'), mpf('100e-12')
    z = sqrt((R + j * w * L) / (G + j * w * C)); g = sqrt((R + j * w * L) * (G + j * w * C))
    add(f"line.rlgc.f{f}", "complex Z0 and gamma of a line with constant R, L, G, C",
        {"R_ohm/m": R, "L_H/m": L, "G_S/m": G, "C_F/m": C, "f_Hz": mpf(f)},
        {"Z0": z, "alpha_Np_per_m": g.real, "beta_rad_per_m": g.imag}, "ohm, Np/m, rad/m", RT, "telegrapher's equations")

# --------------------------------------------------------------------------
# 3. two-wire line
for r in ('1.05', '1.1', '1.5', '2', '2.5', '3', '5', '10', '15', '20', '25', '50', '75', '100', '150', '200'):
    x = mpf(r)
    add(f"pair.z0.{r}", "two-wire line in air, exact and large-spacing estimate", {"D/d": x},
        {"Z0_exact": eta0 / pi * mp.acosh(x), "Z0_log_estimate": eta0 / pi * ln(2 * x)}, "ohm", RT,
        "(eta0/pi) acosh(D/d); estimate (eta0/pi) ln(2D/d); D centre spacing, d wire diameter")
for z in (300, 400, 450, 600):
    add(f"pair.ratio_for.{z}", "D/d for a given Z0 in air", {"Z0": z}, mp.cosh(pi * z / eta0), "1", RT, "cosh(pi Z0/eta0)")
for r in ('0.75', '1', '2', '5', '10', '50'):
    x = mpf(r)
    add(f"wire_over_plane.z0.{r}", "one wire over a perfect plane, air; h to the wire axis", {"h/d": x},
        eta0 / (2 * pi) * mp.acosh(2 * x), "ohm", RT, "(eta0/2pi) acosh(2h/d)")
for dmm, Dmm, z in (('2.0', '150', 0), ('2.0', '75', 0), ('1.628', '25.4', 0), ('1.024', '20', 0)):
    for f in ('1.8', '3.6', '14.2', '28.5'):
        s = mpf('5.8e7'); d = mpf(dmm) * mpf('1e-3'); D = mpf(Dmm) * mpf('1e-3'); ff = mpf(f) * mpf('1e6')
        de = sqrt(2 / (2 * pi * ff * mu0 * s)); Rs = 1 / (s * de)
        prox = (D / d) / sqrt((D / d) ** 2 - 1)
        R = 2 * Rs / (pi * d) * prox
        Z = eta0 / pi * mp.acosh(D / d)
        Rb = 2 * (wire_ratio(d / 2 / de) / (s * pi * (d / 2) ** 2)).real
        al = R / (2 * Z)
        add(f"pair.loss.{dmm}-{Dmm}.{f}MHz", "matched loss of an open copper pair in air (conductor loss only)",
            {"d_mm": mpf(dmm), "D_mm": mpf(Dmm), "f_MHz": mpf(f), "sigma": s},
            {"Z0_ohm": Z, "R_ohm_per_m_HF_with_proximity": R, "R_ohm_per_m_Bessel_no_proximity": Rb,
             "alpha_dB_per_100m": al * 100 * 20 / ln(10)}, "ohm, dB/100 m", "1e-9 for the formula; 2 % against a real line",
            "alpha = R/(2 Z0), R = 2Rs/(pi d) * (D/d)/sqrt((D/d)^2-1)")

# --------------------------------------------------------------------------
# 5. thin antennas (sinusoidal current)
Q = eta0 / (4 * pi)         # exact "30 ohm"
Ci, Si = mp.ci, mp.si
Cin = lambda x: mp.euler + ln(x) - Ci(x)

R_c, X_c = 30 * Cin(2 * pi), 30 * Si(2 * pi)
add("ant.dipole.half.Z.30", "half-wave dipole, induced EMF, thin wire, with the textbook factor 30 (eta = 120 pi)", {"length": "lambda/2"},
    mpc(R_c, X_c), "ohm", RT, "30[Cin(2pi)] + j30 Si(2pi)")
add("ant.dipole.half.Z.exact", "the same with eta0/(4 pi) = 29.9792458", {"length": "lambda/2"},
    mpc(Q * Cin(2 * pi), Q * Si(2 * pi)), "ohm", RT, "(eta0/4pi)[Cin(2pi) + j Si(2pi)]")
add("ant.dipole.half.Cin2pi", "Cin(2 pi)", {}, Cin(2 * pi), "1", RT, "gamma + ln x - Ci(x)")
add("ant.dipole.half.Si2pi", "Si(2 pi)", {}, Si(2 * pi), "1", RT, "sine integral")
Dh = 4 / Cin(2 * pi)
add("ant.dipole.half.D", "directivity of a half-wave dipole", {}, {"D": Dh, "dBi": 10 * mp.log10(Dh)}, "1, dBi", RT, "4/Cin(2pi)")
add("ant.monopole.quarter.Z.30", "quarter-wave monopole on a perfect plane (factor 30)", {}, mpc(R_c / 2, X_c / 2), "ohm", RT, "half the dipole")
add("ant.monopole.quarter.D", "its directivity", {}, {"D": 2 * Dh, "dBi": 10 * mp.log10(2 * Dh)}, "1, dBi", RT, "twice the dipole")
add("ant.hertz.D", "Hertzian dipole directivity", {}, {"D": mpf(3) / 2, "dBi": 10 * mp.log10(mpf(3) / 2)}, "1, dBi", "exact", "3/2")


def dip_R(kl):       # referred to current maximum, factor 30 form is eta/(2pi)
    return (eta0 / (2 * pi)) * (mp.euler + ln(kl) - Ci(kl) + mpf(1) / 2 * mp.sin(kl) * (Si(2 * kl) - 2 * Si(kl))
                                + mpf(1) / 2 * mp.cos(kl) * (mp.euler + ln(kl / 2) + Ci(2 * kl) - 2 * Ci(kl)))


def dip_X(kl, ka, l_over_a):
    # ka2l = 2 k a^2 / l
    return (eta0 / (4 * pi)) * (2 * Si(kl) + mp.cos(kl) * (2 * Si(kl) - Si(2 * kl))
                                - mp.sin(kl) * (2 * Ci(kl) - Ci(2 * kl) - Ci(2 * ka / l_over_a)))


def dip_D(kl):
    h = kl / 2
    F = lambda t: ((mp.cos(h * mp.cos(t)) - mp.cos(h)) / mp.sin(t))
    prad = mp.quad(lambda t: F(t) ** 2 * mp.sin(t), [mpf('1e-30'), pi / 4, pi / 2]) * 2
    # maximum
    best = max(F(pi / 2 * i / 2000) ** 2 for i in range(1, 2001))
    return 2 * best / prad


for ll in ('0.02', '0.05', '0.1', '0.2', '0.25', '0.3', '0.4', '0.45', '0.475', '0.48', '0.49', '0.5', '0.6', '0.7', '0.75', '0.8', '0.9', '1.25', '1.5'):
    L = mpf(ll); kl = 2 * pi * L
    Rm = dip_R(kl); sn = mp.sin(kl / 2) ** 2
    row = {"R_max_current": Rm, "R_in": Rm / sn}
    for aa in ('1e-5', '1e-4', '1e-3'):
        A = mpf(aa)
        row["X_in@a/lambda=" + aa] = dip_X(kl, 2 * pi * A, L / A) / sn
    add(f"ant.dipole.emf.{ll}", "centre-fed dipole by the induced-EMF method (sinusoidal current), exact eta0",
        {"length/lambda": L}, row, "ohm", "1e-9 for the formula; within 2-10 % of a real wire only near or below lambda/2",
        "closed form in Si, Ci, cf. Balanis, Antenna Theory, eqs 8-60a/b and 8-61")
for ll in ('0.5', '0.75', '1', '1.25', '1.5'):
    d = dip_D(2 * pi * mpf(ll))
    add(f"ant.dipole.D.{ll}", "directivity of a thin centre-fed dipole (largest lobe)", {"length/lambda": mpf(ll)},
        {"D": d, "dBi": 10 * mp.log10(d)}, "1, dBi", "1e-6 relative (lobe searched on a grid)", "pattern integral")


def mut_side(d, l=mpf(1) / 2):
    """side by side half-wave dipoles, spacing d in wavelengths, exact eta0."""
    k = 2 * pi
    r = sqrt(d * d + l * l)
    u0, u1, u2 = k * d, k * (r + l), k * (r - l)
    return mpc(Q * (2 * Ci(u0) - Ci(u1) - Ci(u2)), -Q * (2 * Si(u0) - Si(u1) - Si(u2)))


def mut_num(dy, dz):
    """echelon, any offset: numerical induced EMF, half-wave, centres apart dy (broadside) and dz (axial), wavelengths."""
    k = 2 * pi; h = mpf(1) / 4
    def Ez(z):
        R1 = sqrt(dy ** 2 + (z - h) ** 2); R2 = sqrt(dy ** 2 + (z + h) ** 2)
        return mp.exp(-j * k * R1) / R1 + mp.exp(-j * k * R2) / R2      # middle term vanishes for lambda/2
    pts = sorted({dz - h, dz + h, *(p for p in (h, -h, dz) if dz - h < p < dz + h)})
    return j * Q * mp.quad(lambda z: Ez(z) * mp.cos(k * (z - dz)), pts)


def mut_col(s, l=mpf(1) / 2):
    """collinear half-wave dipoles, centre spacing s >= l (wavelengths)."""
    k = 2 * pi
    if s == l:
        s = l + mpf('1e-25')
    lnq = ln((s * s - l * l) / (s * s))
    q = Q / 2
    A = -2 * Ci(2 * k * s) + Ci(2 * k * (s - l)) + Ci(2 * k * (s + l)) - lnq
    B = 2 * Si(2 * k * s) - Si(2 * k * (s - l)) - Si(2 * k * (s + l))
    Rr = -q * mp.cos(k * s) * A + q * mp.sin(k * s) * B
    A2 = 2 * Ci(2 * k * s) - Ci(2 * k * (s - l)) - Ci(2 * k * (s + l)) - lnq
    X = -q * mp.cos(k * s) * B + q * mp.sin(k * s) * A2
    return mpc(Rr, X)


f30 = 30 / Q
for i in [5, 10, 15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 75, 80, 90, 100, 110, 120, 125, 130, 140, 150, 160, 170, 175, 180, 190, 200]:
    d = mpf(i) / 100
    z = mut_side(d)
    add(f"ant.mutual.side.{i/100:g}", "mutual impedance of two parallel half-wave dipoles side by side", {"spacing/lambda": d},
        {"Z_exact_eta": z, "Z_factor_30": z * f30}, "ohm", RT, "Si/Ci closed form (Carter 1932; Brown & King 1934)")
for i in [50, 55, 60, 65, 70, 75, 80, 90, 100, 125, 150, 175, 200]:
    s = mpf(i) / 100
    z = mut_col(s)
    chk = mut_num(mpf(0), s) if i > 50 else None
    add(f"ant.mutual.collinear.{i/100:g}", "mutual impedance of two collinear half-wave dipoles, centre spacing s (0.5 = ends touching)",
        {"s/lambda": s}, {"Z_exact_eta": z, "Z_factor_30": z * f30}, "ohm", RT,
        "Si/Ci closed form" + ("; checked against quadrature to %s" % mp.nstr(abs(chk - z), 2) if chk is not None else ""))
for dy, dz in (('0.25', '0.25'), ('0.25', '0.5'), ('0.5', '0.25'), ('0.5', '0.5'), ('0.5', '1.0'), ('1.0', '0.5'), ('1.0', '1.0')):
    z = mut_num(mpf(dy), mpf(dz))
    add(f"ant.mutual.echelon.{dy}.{dz}", "mutual impedance of two parallel half-wave dipoles in echelon", {"broadside offset/lambda": mpf(dy), "axial offset/lambda": mpf(dz)},
        {"Z_exact_eta": z, "Z_factor_30": z * f30}, "ohm", "1e-9 relative", "quadrature of the exact field of a sinusoidal dipole")
# self check: side by side by quadrature
assert abs(mut_num(mpf('0.3'), mpf(0)) - mut_side(mpf('0.3'))) < mpf('1e-20')
assert abs(mut_num(mpf(0), mpf('0.8')) - mut_col(mpf('0.8'))) < mpf('1e-18')

Z11 = mpc(Q * Cin(2 * pi), Q * Si(2 * pi))
for i in [5, 10, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 75, 80, 85, 90, 95, 100, 110, 120, 125, 130, 140, 150]:
    h = mpf(i) / 100
    z = Z11 - mut_side(2 * h)
    # directivity straight above and best elevation
    num_pat = lambda el: 4 * mp.sin(2 * pi * h * mp.sin(el)) ** 2
    gmax = max(((num_pat(pi / 2 * q / 900), pi / 2 * q / 900) for q in range(1, 901)), key=lambda t: t[0])
    # broadside plane (azimuth normal to wire): element pattern = 1
    D0 = Dh * Z11.real / z.real
    add(f"ant.ground.perfect.horizontal.{i/100:g}", "half-wave horizontal dipole over a perfect plane, input impedance by image",
        {"height/lambda": h}, {"Z_exact_eta": z, "Z_factor_30": z * f30, "gain_zenith_dBi": 10 * mp.log10(D0 * num_pat(pi / 2)) if num_pat(pi / 2) > mpf('1e-20') else None,
                               "gain_max_broadside_dBi": 10 * mp.log10(D0 * gmax[0]), "elevation_of_max_deg": gmax[1] * 180 / pi},
        "ohm, dBi, deg", "1e-9 for Z; 0.1 deg for the elevation (grid 0.1 deg)", "Z11 - Z12(2h)")
for i in [25, 30, 35, 40, 45, 50, 60, 70, 75, 80, 90, 100, 110, 125, 150]:
    h = mpf(i) / 100
    z = Z11 + mut_col(2 * h)
    add(f"ant.ground.perfect.vertical.{i/100:g}", "half-wave vertical dipole over a perfect plane, centre height h (0.25 = end at the ground)",
        {"centre height/lambda": h}, {"Z_exact_eta": z, "Z_factor_30": z * f30}, "ohm", RT, "Z11 + Zcollinear(2h)")

# short elements
kk = 2 * pi
for ll in ('0.01', '0.02', '0.05', '0.1'):
    L = mpf(ll)
    add(f"ant.short.{ll}", "short element radiation resistance, four usual cases (classic factor 30)", {"l/lambda (total length of the dipole, or height of the monopole)": L},
        {"dipole_uniform_current_80pi2": 80 * pi ** 2 * L ** 2, "dipole_triangular_20pi2": 20 * pi ** 2 * L ** 2,
         "monopole_uniform_160pi2": 160 * pi ** 2 * L ** 2, "monopole_triangular_40pi2": 40 * pi ** 2 * L ** 2,
         "dipole_emf_exact(sinusoidal)": dip_R(kk * L) / mp.sin(kk * L / 2) ** 2 * 30 / Q}, "ohm", RT,
        "20(k*arm)^2 = 20 pi^2 (l/lambda)^2 with arm = l/2: beware which length is meant")
add("ant.loop.small.const", "constant in R = const*(N*A/lambda^2)^2", {}, {"classic_320pi4": 320 * pi ** 4, "exact_eta": eta0 * 8 * pi ** 3 / 3}, "ohm", RT, "320 pi^4 = 31170.9; exact 8 pi^3 eta0/3")
for cc in ('0.05', '0.1', '0.2', '0.3', '0.5', '1.0'):
    C = mpf(cc)
    ex = eta0 * pi / 2 * C * mp.quad(lambda y: mp.besselj(2, y), [0, 2 * C])
    # R = (eta0*pi/2)(C/lambda) * int_0^{2ka} J2
    ap = eta0 * pi / 6 * C ** 4
    add(f"ant.loop.uniform.{cc}", "circular loop with uniform current, exact integral against the small-loop estimate", {"circumference/lambda": C},
        {"R_exact": ex, "R_small_loop": ap}, "ohm", RT, "R = (pi eta0/2)(C/lambda) int_0^{2C/lambda} J2; small: (pi eta0/6)(C/lambda)^4")
for D, a in ((mpf(1), mpf('0.005')), (mpf('0.9'), mpf('0.011'))):
    b = D / 2
    add(f"ant.loop.L.{float(D)}", "inductance of a one-turn circular loop (skin effect, no internal L)", {"diameter_m": D, "wire radius_m": a},
        mu0 * b * (ln(8 * b / a) - 2), "H", RT, "mu0 b (ln(8b/a) - 2), thin wire")
add("ant.folded.ratio4", "folded dipole step-up, equal wires", {}, {"ratio": mpf(4), "R_ohm_classic": 4 * R_c}, "1, ohm", "exact", "(1+1)^2")
for r1, r2, S in (('1', '2', '20'), ('2', '1', '20'), ('1', '5', '25'), ('1', '1', '10')):
    a, b, s = mpf(r1), mpf(r2), mpf(S)
    # exact for two unequal wires in a static field: nu = acosh((v^2 - u^2 + 1)/(2v)) / acosh((v^2+u^2-1)/(2uv)), u=a2/a1, v=d/a1
    u, v = b / a, s / a
    n = mp.acosh((v ** 2 - u ** 2 + 1) / (2 * v)) / mp.acosh((v ** 2 + u ** 2 - 1) / (2 * u * v))
    add(f"ant.folded.unequal.{r1}-{r2}-{S}", "folded dipole step-up with unequal wires (fed wire radius a1, other a2, spacing d)",
        {"a1": a, "a2": b, "d": s}, {"ratio_exact": (1 + n) ** 2, "ratio_log": (1 + ln(s / a) / ln(s / b)) ** 2}, "1", RT,
        "(1+n)^2, n = acosh((v^2-u^2+1)/2v)/acosh((v^2+u^2-1)/2uv), u = a2/a1, v = d/a1")

# full-wave square loop, sinusoidal current, far-field integration
def square_loop():
    # side lambda/4 in the xz plane (axis y), fed at the middle of the bottom side
    import math, cmath
    k = 2 * math.pi; s = 0.25
    n = 60
    gl, gw = mp_gauss(n)
    segs = []
    # parameterise perimeter coordinate p from feed, current = cos(k p)
    def side(p0, p1, r0, r1):
        for x, w in zip(gl, gw):
            t = (x + 1) / 2
            p = p0 + (p1 - p0) * t
            r = [r0[i] + (r1[i] - r0[i]) * t for i in range(3)]
            dl = [(r1[i] - r0[i]) * w / 2 for i in range(3)]
            segs.append((r, dl, math.cos(k * p)))
    hs = s / 2
    side(0, hs, (0, 0, -hs), (hs, 0, -hs)); side(hs, hs + s, (hs, 0, -hs), (hs, 0, hs))
    side(hs + s, hs + 2 * s, (hs, 0, hs), (-hs, 0, hs)); side(hs + 2 * s, hs + 3 * s, (-hs, 0, hs), (-hs, 0, -hs))
    side(hs + 3 * s, 4 * s, (-hs, 0, -hs), (0, 0, -hs))
    def U(th, ph):
        st, ct, sp, cp = math.sin(th), math.cos(th), math.sin(ph), math.cos(ph)
        N = [0, 0, 0]
        for r, dl, I in segs:
            e = cmath.exp(1j * k * (r[0] * st * cp + r[1] * st * sp + r[2] * ct)) * I
            for i in range(3):
                N[i] += dl[i] * e
        nt = N[0] * ct * cp + N[1] * ct * sp - N[2] * st
        npp = -N[0] * sp + N[1] * cp
        return abs(nt) ** 2 + abs(npp) ** 2
    tg, tw = mp_gauss(40); tot = 0
    for x, w in zip(tg, tw):
        th = math.acos(x)
        for q in range(80):
            tot += w * 2 * math.pi / 80 * U(th, 2 * math.pi * q / 80)
    eta = float(eta0)
    P = eta * k ** 2 / (32 * math.pi ** 2) * tot
    R = 2 * P
    D = 4 * math.pi * U(math.pi / 2, math.pi / 2) / tot
    return R, D


def mp_gauss(n):
    import numpy as np
    x, w = np.polynomial.legendre.leggauss(n)
    return [float(v) for v in x], [float(v) for v in w]


Rq, Dq = square_loop()
add("ant.loop.square1lambda", "square loop of one wavelength, current cos(k p) from the feed: radiation resistance and directivity along the axis",
    {"perimeter/lambda": 1, "feed": "middle of one side"}, {"R_ohm": Rq, "D": Dq, "dBi": float(10 * mp.log10(mpf(Dq)))}, "ohm, dBi", "1e-6 relative",
    "far-field integration (double precision)")

# field strengths
add("field.eirp1kW.1km", "rms field of 1 kW EIRP at 1 km in free space", {}, sqrt(eta0 * 1000 / (4 * pi)) / 1000 * 1000, "mV/m", RT, "sqrt(eta0 P/4pi)/d; 173.2 with eta = 120 pi")
add("field.halfwave1kW.1km", "the same for 1 kW into a half-wave dipole, broadside", {}, sqrt(eta0 * 1000 * Dh / (4 * pi)), "mV/m", RT, "7.02 sqrt(P)/d")
add("field.monopole1kW.1km", "1 kW radiated by a short monopole on a perfect plane, on the plane", {}, sqrt(eta0 * 1000 * 3 / (4 * pi)), "mV/m", RT, "D = 3; 300 mV/m in ITU-R P.368")

# --------------------------------------------------------------------------
# 4. ground
SOILS = [("average", 13, '0.005'), ("good", 20, '0.0303'), ("poor", 5, '0.001'), ("very dry (P.527)", 3, '0.0001'), ("medium dry (P.527)", 15, '0.001'),
         ("wet (P.527)", 30, '0.01'), ("fresh water (P.527)", 80, '0.003'), ("sea (P.527)", 70, '5')]


def fres(ec, el):
    s, c = mp.sin(el), mp.cos(el)
    q = sqrt(ec - c * c)
    if q.real < 0:
        q = -q
    return (s - q) / (s + q), (ec * s - q) / (ec * s + q)


for name, er, sg in SOILS:
    for f in ('3.6', '14.2', '145'):
        w = 2 * pi * mpf(f) * mpf('1e6')
        ec = mpc(er, -mpf(sg) / (w * eps0))
        for el in ('1', '5', '10', '20', '30', '45', '60', '90'):
            rh, rv = fres(ec, mpf(el) * pi / 180)
            add(f"ground.fresnel.{name}.{f}MHz.{el}deg".replace(" ", "_"), "plane-wave reflection coefficients, elevation angle above the surface",
                {"eps_r": er, "sigma_S/m": mpf(sg), "f_MHz": mpf(f), "elevation_deg": mpf(el), "eps_complex": ec},
                {"R_h": rh, "R_v": rv, "|R_h|": abs(rh), "|R_v|": abs(rv)}, "1", RT,
                "R_h=(s-q)/(s+q), R_v=(e s-q)/(e s+q), s=sin el, q=sqrt(e-cos^2 el), e=eps_r-j sigma/(w eps0); R_v(90 deg) = -R_h(90 deg) in this sign convention")
        # pseudo-Brewster
        g = lambda el: abs(fres(ec, el)[1])
        lo, hi = mpf('1e-4'), pi / 2 - mpf('1e-6')
        gr = (sqrt(mpf(5)) - 1) / 2
        # coarse
        pts = [lo + (hi - lo) * i / 400 for i in range(401)]
        im = min(range(401), key=lambda i: g(pts[i]))
        a, b = pts[max(im - 1, 0)], pts[min(im + 1, 400)]
        for _ in range(160):
            x1 = b - gr * (b - a); x2 = a + gr * (b - a)
            if g(x1) < g(x2): b = x2
            else: a = x1
        el0 = (a + b) / 2
        de = 1 / (sqrt(j * w * mu0 * (mpf(sg) + j * w * eps0 * er))).real
        add(f"ground.brewster.{name}.{f}MHz".replace(" ", "_"), "pseudo-Brewster elevation (least |R_v|) and depth of penetration",
            {"eps_r": er, "sigma_S/m": mpf(sg), "f_MHz": mpf(f)},
            {"elevation_deg": el0 * 180 / pi, "|R_v|_min": g(el0), "estimate_asin_1/sqrt|e|_deg": mp.asin(1 / sqrt(abs(ec))) * 180 / pi,
             "depth_1/e_m": de, "loss_tangent": -ec.imag / ec.real}, "deg, 1, m", "1e-6", "minimum search; depth = 1/Re gamma")
for er in (2, 3, 5, 10, 15, 30, 80):
    add(f"ground.brewster.lossless.{er}", "Brewster elevation of a lossless dielectric", {"eps_r": er}, mp.atan(1 / sqrt(mpf(er))) * 180 / pi, "deg", RT, "atan(1/sqrt eps_r)")


# Norton/Sommerfeld attenuation
def F(w):
    return 1 - j * sqrt(pi * w) * mp.exp(-w) * mp.erfc(j * sqrt(w))


for p in ('0.01', '0.1', '0.5', '1', '2', '5', '10', '20', '50', '100'):
    for b in ('0', '5', '30', '60', '90'):
        P, B = mpf(p), mpf(b) * pi / 180
        w = P * mp.exp(-j * B)
        v = abs(F(w))
        ap = (2 + mpf('0.3') * P) / (2 + P + mpf('0.6') * P ** 2) - mp.sin(B) * sqrt(P / 2) * mp.exp(-5 * P / 8)
        add(f"ground.norton.p{p}.b{b}", "ground-wave attenuation factor |F| of a vertical dipole on a flat earth", {"numerical distance p": P, "phase b_deg": mpf(b)},
            {"|F|_exact": v, "|F|_empirical": ap}, "1", RT + "; empirical form is for b below about 35 deg",
            "F = 1 - j sqrt(pi w) e^{-w} erfc(j sqrt w), w = p e^{-jb}; empirical (2+0.3p)/(2+p+0.6p^2) - sin b sqrt(p/2) e^{-5p/8} (Norton 1936-41)")


# ITU-R P.527 water and soil
def p527_water(f, T, S=0):
    th = 300 / (T + mpf('273.15')) - 1
    es = mpf('77.66') + mpf('103.3') * th; e1 = mpf('0.0671') * es; ei = mpf('3.52') - mpf('7.52') * th
    f1 = mpf('20.20') - mpf('146.4') * th + 316 * th ** 2; f2 = mpf('39.8') * f1
    sig = mpf(0)
    if S:
        es *= mp.exp(mpf('-3.56417e-3') * S + mpf('4.74868e-6') * S ** 2 + mpf('1.15574e-5') * T * S)
        f1 *= 1 + S * (mpf('2.39357e-3') - mpf('3.13530e-5') * T + mpf('2.52477e-7') * T ** 2)
        e1 *= mp.exp(mpf('-6.28908e-3') * S + mpf('1.76032e-4') * S ** 2 - mpf('9.22144e-5') * T * S)
        f2 *= 1 + S * (mpf('-1.99723e-2') + mpf('1.81176e-4') * T)
        ei *= 1 + S * (mpf('-2.04265e-3') + mpf('1.57883e-4') * T)
        s35 = mpf('2.903602') + mpf('8.607e-2') * T + mpf('4.738817e-4') * T ** 2 - mpf('2.991e-6') * T ** 3 + mpf('4.3047e-9') * T ** 4
        R15 = S * (mpf('37.5109') + mpf('5.45216') * S + mpf('1.4409e-2') * S ** 2) / (mpf('1004.75') + mpf('182.283') * S + S ** 2)
        a0 = (mpf('6.9431') + mpf('3.2841') * S - mpf('9.9486e-2') * S ** 2) / (mpf('84.850') + mpf('69.024') * S + S ** 2)
        a1 = mpf('49.843') - mpf('0.2276') * S + mpf('0.198e-2') * S ** 2
        sig = s35 * R15 * (1 + a0 * (T - 15) / (a1 + T))
    re = (es - e1) / (1 + (f / f1) ** 2) + (e1 - ei) / (1 + (f / f2) ** 2) + ei
    im = (f / f1) * (es - e1) / (1 + (f / f1) ** 2) + (f / f2) * (e1 - ei) / (1 + (f / f2) ** 2) + 18 * sig / f
    return re, im, sig


for T in (0, 10, 20, 30):
    for f in ('0.01', '0.1', '1', '10'):
        re, im, _ = p527_water(mpf(f), mpf(T))
        add(f"p527.pure.{T}C.{f}GHz", "pure water, ITU-R P.527 double Debye", {"T_C": T, "f_GHz": mpf(f)}, {"eps'": re, "eps''": im}, "1", RT,
            "ITU-R P.527-4 (2017) and later, pure-water equations; coefficients confirmed in a public transcription")
        re, im, sg = p527_water(mpf(f), mpf(T), mpf(35))
        add(f"p527.sea.{T}C.{f}GHz", "sea water 35 g/kg, ITU-R P.527", {"T_C": T, "f_GHz": mpf(f), "S_g/kg": 35}, {"eps'": re, "eps''": im, "sigma_S/m": sg}, "1, S/m", RT,
            "ITU-R P.527-4 (2017) and later, sea-water equations; coefficients confirmed in public transcriptions")


def p527_soil(f, T, sand, clay, rs, mv, rb=None):
    silt = 100 - sand - clay
    if rb is None:
        rb = mpf('1.07256') + mpf('0.078886') * ln(sand) + mpf('0.038753') * ln(clay) + mpf('0.032732') * ln(silt)
    re_w, im_w, _ = p527_water(f, T)
    s1 = mpf('0.0467') + mpf('0.2204') * rb - mpf('0.004111') * sand - mpf('0.006614') * clay
    s2 = mpf('-1.645') + mpf('1.939') * rb - mpf('0.0225622') * sand + mpf('0.01594') * clay
    u = f / mpf('1.35')
    se1 = u * (s1 - s2) / (1 + u ** 2); se2 = s2 + (s1 - s2) / (1 + u ** 2)
    cor = 18 / f * (rs - rb) / (rs * mv)
    re_fw = re_w + se1 * cor; im_fw = im_w + se2 * cor
    al = mpf('0.65')
    b1 = mpf('1.2748') - mpf('0.00519') * sand - mpf('0.00152') * clay
    b2 = mpf('1.33797') - mpf('0.00603') * sand - mpf('0.00166') * clay
    esm = (mpf('1.01') + mpf('0.44') * rs) ** 2 - mpf('0.062')
    re = (1 + rb / rs * (esm ** al - 1) + mv ** b1 * re_fw ** al - mv) ** (1 / al)
    im = (mv ** b2 * im_fw ** al) ** (1 / al)
    return re, im, rb


for nm, sand, clay, rs in (("sandy loam", '51.52', '13.43', '2.66'), ("loam", '41.96', '8.53', '2.70'), ("silty loam", '30.63', '13.48', '2.59'), ("silty clay", '5.02', '47.38', '2.56')):
    for mv in ('0.05', '0.2', '0.4'):
        for f in ('1', '10'):
            re, im, rb = p527_soil(mpf(f), mpf(23), mpf(sand), mpf(clay), mpf(rs), mpf(mv))
            add(f"p527.soil.{nm}.{mv}.{f}GHz".replace(" ", "_"), "soil, ITU-R P.527 semi-empirical model", {"sand_%": mpf(sand), "clay_%": mpf(clay), "specific gravity": mpf(rs), "water m3/m3": mpf(mv), "f_GHz": mpf(f), "T_C": 23, "bulk density (computed)": rb},
                {"eps'": re, "eps''": im, "sigma_S/m": im * f_ if (f_ := mpf(f) / 18) else None}, "1, S/m", RT,
                "ITU-R P.527-4 formula (model made for 1-10 GHz and up: below 1 GHz it is an extrapolation); textures quoted from memory")

# --------------------------------------------------------------------------
# 6. mismatch
for s in ('1.05', '1.1', '1.2', '1.25', '1.4', '1.5', '1.75', '2', '2.5', '3', '4', '5', '6', '8', '10', '20', '50', '100'):
    S = mpf(s); g = (S - 1) / (S + 1)
    add(f"swr.{s}", "SWR to reflection", {"SWR": S}, {"rho": g, "return_loss_dB": -20 * mp.log10(g), "mismatch_loss_dB": -10 * mp.log10(1 - g * g), "reflected_power_%": 100 * g * g}, "1, dB, %", RT, "rho = (S-1)/(S+1)")
for ml in ('0.1', '0.5', '1', '2', '3', '6', '10'):
    for s in ('1', '1.5', '2', '3', '5', '10', '20'):
        S = mpf(s); g = (S - 1) / (S + 1); a = 10 ** (mpf(ml) / 10)
        tot = 10 * mp.log10((a * a - g * g) / (a * (1 - g * g)))
        gi = g / a
        add(f"loss.total.ml{ml}.swr{s}", "total loss of a mismatched line (real Z0, low-loss form)", {"matched_loss_dB": mpf(ml), "SWR_at_load": S},
            {"total_loss_dB": tot, "extra_dB": tot - mpf(ml), "SWR_at_input": (1 + gi) / (1 - gi)}, "dB", RT,
            "10 log10[(a^2 - rho^2)/(a(1 - rho^2))], a = 10^(ML/10), rho at the load")
for p in (100, 400, 1000, 1500):
    for s in ('1', '2', '3', '5', '10'):
        S = mpf(s)
        add(f"line.vmax.{p}W.swr{s}", "highest rms voltage and current on a 50-ohm lossless line", {"P_W": p, "Z0": 50, "SWR": S},
            {"V_rms": sqrt(p * 50 * S), "V_peak": sqrt(2 * p * 50 * S), "I_rms": sqrt(p * S / 50)}, "V, A", RT, "V = sqrt(P Z0 S), I = sqrt(P S/Z0)")

# exact lossy line example
def zin(ZL, Z0, gl):
    return Z0 * (ZL + Z0 * mp.tanh(gl)) / (Z0 + ZL * mp.tanh(gl))


for ZL in (mpc(100, 0), mpc(25, 0), mpc(50, 100), mpc(5, -500), mpc(1000, 0)):
    for Z0 in (mpc(50, 0), mpc(50, -1)):
        gl = mpc(mpf('0.1'), mpf('2.0'))
        zi = zin(ZL, Z0, gl)
        # power ratio: V1 = V2 cosh + I2 Z0 sinh
        I2 = mpf(1); V2 = ZL
        V1 = V2 * mp.cosh(gl) + I2 * Z0 * mp.sinh(gl); I1 = I2 * mp.cosh(gl) + V2 / Z0 * mp.sinh(gl)
        P1 = (V1 * mp.conj(I1)).real; P2 = (V2 * mp.conj(I2)).real
        add(f"line.exact.ZL{cname(ZL)}.Z0{cname(Z0)}", "input impedance and exact power loss of a lossy line",
            {"ZL": ZL, "Z0": Z0, "gamma*l (Np + j rad)": gl}, {"Zin": zi, "loss_dB": 10 * mp.log10(P1 / P2)}, "ohm, dB", RT, "telegrapher's equations, ABCD form")
# open/short test
Z0 = mpc(50, mpf('-0.5')); gl = mpc(mpf('0.15'), mpf('1.2'))
zoc, zsc = Z0 / mp.tanh(gl), Z0 * mp.tanh(gl)
add("line.open_short", "recover Z0 and gamma*l from open and short readings", {"Zoc": zoc, "Zsc": zsc}, {"Z0": sqrt(zoc * zsc), "tanh(gamma l)": sqrt(zsc / zoc), "gamma l": mp.atanh(sqrt(zsc / zoc)), "one_way_loss_dB": gl.real * 20 / ln(10)}, "ohm", RT, "Z0 = sqrt(Zoc Zsc), tanh gl = sqrt(Zsc/Zoc)")
add("line.qwt.50-100", "quarter-wave transformer", {"R1": 50, "R2": 100}, sqrt(mpf(5000)), "ohm", RT, "sqrt(R1 R2)")
add("line.qwt.50-30", "quarter-wave transformer", {"R1": 50, "R2": 30}, sqrt(mpf(1500)), "ohm", RT, "sqrt(R1 R2)")
add("line.qwt.75between", "75-ohm quarter-wave section and a 50-ohm line match", {"Z": 75, "R1": 50}, mpf(5625) / 50, "ohm", "exact", "75^2/50")
for a_, b_ in ((50, 75), (50, 100), (50, 300)):
    B = mpf(b_) / a_
    th = mp.atan(sqrt(1 / (B + 1 + 1 / B)))
    add(f"line.twelfth.{a_}-{b_}", "two equal short sections of the opposite lines ('twelfth-wave' transformer)", {"Z1": a_, "Z2": b_}, {"each_deg": th * 180 / pi, "each/lambda": th / (2 * pi)}, "deg, lambda", RT, "tan^2 th = 1/(B+1+1/B), B = Z2/Z1")
    # verify
    z = zin(mpc(b_, 0), mpc(a_, 0), j * th); z = zin(z, mpc(b_, 0), j * th)
    assert abs(z - a_) < mpf('1e-25'), z
# series section
for Z0_, Z1_, ZL in ((50, 75, mpc(100, 0)), (75, 50, mpc(50, 0)), (50, 75, mpc(38, 0)), (300, 450, mpc(500, 100))):
    n = mpf(Z1_) / Z0_; r = ZL.real / Z0_; x = ZL.imag / Z0_
    disc = ((r - 1) ** 2 + x * x) / (r * (n - 1 / n) ** 2 - (r - 1) ** 2 - x * x)
    if disc <= 0:
        add(f"line.series_section.{Z0_}-{Z1_}-{cname(ZL)}", "series-section transformer: no solution with these lines", {"Z0": Z0_, "Z1": Z1_, "ZL": ZL}, "no solution", "", "exact", "discriminant negative")
        continue
    tb = sqrt(disc)
    ta = ((n - r / n) * tb + x) / (r + x * n * tb - 1)
    tA, tB = mp.atan(ta), mp.atan(tb)
    if tA < 0: tA += pi
    z = zin(ZL, mpc(Z0_, 0), j * tA); z = zin(z, mpc(Z1_, 0), j * tB)
    assert abs(z - Z0_) < mpf('1e-20'), (Z0_, Z1_, z)
    add(f"line.series_section.{Z0_}-{Z1_}-{cname(ZL)}", "series-section transformer: main line from load to section, and length of the section", {"Z0": Z0_, "Z1": Z1_, "ZL": ZL},
        {"l1_deg (load to section)": tA * 180 / pi, "l2_deg (section)": tB * 180 / pi}, "deg", RT, "tan l2 = sqrt{[(r-1)^2+x^2]/[r(n-1/n)^2-(r-1)^2-x^2]}, tan l1 = [(n-r/n) tan l2 + x]/[r + x n tan l2 - 1] (verified by chaining)")


# single stub (shunt), line-stub-load, 50 ohm
def shunt_stub(Z0_, ZL):
    out = []
    YL = 1 / ZL; Y0 = 1 / mpf(Z0_)
    RL, XL = ZL.real, ZL.imag
    if RL == Z0_:
        ts = [-XL / (2 * Z0_)]
    else:
        rt = sqrt(RL * ((Z0_ - RL) ** 2 + XL ** 2) / Z0_)
        ts = [(XL + rt) / (RL - Z0_), (XL - rt) / (RL - Z0_)]
    for t in ts:
        d = mp.atan(t) / (2 * pi)
        if d < 0: d += mpf(1) / 2
        B = (RL ** 2 * t - (Z0_ - XL * t) * (XL + Z0_ * t)) / (Z0_ * (RL ** 2 + (XL + Z0_ * t) ** 2))
        ls = mp.atan(Y0 / B) / (2 * pi); lo = -mp.atan(B / Y0) / (2 * pi)
        if ls < 0: ls += mpf(1) / 2
        if lo < 0: lo += mpf(1) / 2
        out.append({"d/lambda": d, "short_stub/lambda": ls, "open_stub/lambda": lo})
    return out


for ZL in (mpc(60, -80), mpc(100, 0), mpc(25, 25), mpc(200, -100)):
    add(f"match.shunt_stub.{cname(ZL)}", "single shunt stub in 50 ohm, both solutions", {"ZL": ZL, "Z0": 50}, shunt_stub(50, ZL), "lambda", RT, "closed form, cf. Pozar, Microwave Engineering, section 5.2")


def lnet(ZL, Z0_, f):
    R, X = ZL.real, ZL.imag
    out = []
    w = 2 * pi * f
    if R > Z0_:
        for sg in (1, -1):
            B = (X + sg * sqrt(R / Z0_) * sqrt(R ** 2 + X ** 2 - Z0_ * R)) / (R ** 2 + X ** 2)
            Xs = 1 / B + X * Z0_ / R - Z0_ / (B * R)
            out.append((B, Xs, "shunt at load"))
    else:
        for sg in (1, -1):
            Xs = sg * sqrt(R * (Z0_ - R)) - X
            B = sg * sqrt((Z0_ - R) / R) / Z0_
            out.append((B, Xs, "shunt at line"))
    res = []
    for B, Xs, n in out:
        d = {"B_S": B, "X_ohm": Xs, "topology": n}
        d["shunt"] = {"C_pF": B / w * mpf('1e12')} if B > 0 else {"L_nH": -1 / (w * B) * mpf('1e9')}
        d["series"] = {"L_nH": Xs / w * mpf('1e9')} if Xs > 0 else {"C_pF": -1 / (w * Xs) * mpf('1e12')}
        res.append(d)
    return res


for ZL, z0, f in ((mpc(200, -100), 100, mpf('500e6')), (mpc(10, 0), 50, mpf('7.1e6')), (mpc(200, 0), 50, mpf('3.6e6')), (mpc(35, -120), 50, mpf('14.2e6')), (mpc(2000, 0), 50, mpf('1.85e6')), (mpc(5, 20), 50, mpf('28.5e6'))):
    add(f"match.L.{cname(ZL)}.{z0}", "two-element match, both solutions", {"ZL": ZL, "Z0": z0, "f_Hz": f}, [{k: (num(v) if not isinstance(v, str) else v) for k, v in d.items()} for d in lnet(ZL, mpf(z0), f)], "S, ohm, pF, nH", RT, "closed form, cf. Pozar section 5.1")
for r in ('2', '4', '10', '40'):
    add(f"match.L.Q.{r}", "loaded Q of a two-element match between resistances", {"ratio": mpf(r)}, sqrt(mpf(r) - 1), "1", RT, "Q = sqrt(Rhigh/Rlow - 1)")

# --------------------------------------------------------------------------
# 9. coils
def nagaoka(x):
    """K for x = diameter/length"""
    x = mpf(x)
    m = x * x / (1 + x * x)              # parameter k^2 = D^2/(D^2+l^2)
    kq = sqrt(m); kp = sqrt(1 - m)
    Kk, Ek = mp.ellipk(m), mp.ellipe(m)
    return 4 / (3 * pi * kp) * ((kp ** 2 / kq ** 2) * (Kk - Ek) + Ek - kq)


for x in ('0.05', '0.1', '0.2', '0.3', '0.5', '0.7', '1', '1.5', '2', '2.5', '3', '4', '5', '7', '10', '20', '50', '100'):
    add(f"coil.nagaoka.{x}", "Nagaoka coefficient, exact current sheet", {"diameter/length": mpf(x)}, nagaoka(x), "1", RT, "Lorenz/Nagaoka, elliptic integrals")
for D, l, N in ((50.8, 50.8, 20), (50, 100, 20), (50, 25, 10), (25.4, 12.7, 10)):
    Dm, lm = mpf(D) / 1000, mpf(l) / 1000
    Lx = mu0 * pi * (Dm / 2) ** 2 * N ** 2 / lm * nagaoka(Dm / lm)
    r_in, l_in = Dm / 2 / mpf('0.0254'), lm / mpf('0.0254')
    Lw = r_in ** 2 * N ** 2 / (9 * r_in + 10 * l_in)
    Lw82 = mu0 * (Dm / 2) * N ** 2 * (ln(1 + pi * (Dm / 2) / lm) + 1 / (mpf('2.3') + mpf('1.6') * lm / (Dm / 2) + mpf('0.44') * (lm / (Dm / 2)) ** 2))
    add(f"coil.L.D{D}.l{l}.N{N}", "inductance of a single-layer coil: exact sheet, Wheeler 1928, Wheeler 1982", {"D_mm": D, "l_mm": l, "N": N},
        {"L_sheet_uH": Lx * mpf('1e6'), "L_wheeler1928_uH": Lw, "L_wheeler1982_uH": Lw82 * mpf('1e6')}, "uH", RT, "L = mu0 pi r^2 N^2 K/l; Wheeler 1928 r^2N^2/(9r+10l) inches (1 % for l > 0.8 r)")

# --------------------------------------------------------------------------
# 7. exposure
def S_far(P, G, R, F=1):
    return F * P * G / (4 * pi * R ** 2)


add("exposure.oet65.eq8x17", "array of 24 dBi at 144 MHz, 1500 W average, ground factor 2.56: distance to 1.0 and 0.2 mW/cm2",
    {"P_W": 1500, "G_dBi": 24, "factor": mpf('2.56')}, {"controlled_m": sqrt(mpf('2.56') * 1500 * 10 ** mpf('2.4') / (4 * pi * 10)), "controlled_ft": sqrt(mpf('2.56') * 1500 * 10 ** mpf('2.4') / (4 * pi * 10)) / mpf('0.3048'),
                                                         "uncontrolled_m": sqrt(mpf('2.56') * 1500 * 10 ** mpf('2.4') / (4 * pi * 2)), "uncontrolled_ft": sqrt(mpf('2.56') * 1500 * 10 ** mpf('2.4') / (4 * pi * 2)) / mpf('0.3048')},
    "m, ft", RT, "S = 2.56 P G/(4 pi R^2); a published table gives 287 ft and 642 ft")
add("exposure.oet65.coef", "coefficient in S[uW/cm2] = K*ERP[W]/R[m]^2 with factor 2.56 and 1.64", {}, mpf('0.64') * mpf('1.64') / pi * 100, "uW/cm2*m2/W", RT, "OET 65: 33.4")
for f_, S_, nm in (('30-300', mpf(2), 'VHF'), ('14.2', 1800 / mpf('14.2') ** 2, '20 m'), ('300-1500@435', mpf(435) / 150, '70 cm')):
    add(f"exposure.exempt.check.{nm}", "1.1307(b)(3)(i)(C) threshold coefficient = S pi/1.64 (full reflection, factor 4)", {"S_W/m2": S_}, S_ * pi / mpf('1.64'), "W/m2 of R^2", "0.5 % (printed values are rounded)", "printed: 3.83 R^2; 3450 R^2/f^2; 0.0128 R^2 f")
for P, G, f_, R in ((100, mpf('2.15'), 14.2, 5), (100, mpf('2.15'), 28.5, 5), (1500, mpf('7'), 14.2, 15), (50, mpf('6'), 145, 3), (1500, mpf('10'), 50.1, 10)):
    g = 10 ** (G / 10)
    lim_gp = mpf(1800) / mpf(f_) ** 2 if f_ < 30 else mpf(2)
    lim_oc = mpf(9000) / mpf(f_) ** 2 if f_ < 30 else mpf(10)
    add(f"exposure.far.{P}W.{float(G)}dBi.{f_}MHz.{R}m", "far-field power density and distances to the FCC limits (100 % duty)", {"P_W": P, "G_dBi": G, "f_MHz": f_, "R_m": R},
        {"S_free_W/m2": S_far(P, g, R), "S_x2.56_W/m2": S_far(P, g, R, mpf('2.56')), "S_x4_W/m2": S_far(P, g, R, 4), "E_free_V/m": sqrt(S_far(P, g, R) * eta0),
         "d_GP_x2.56_m": sqrt(mpf('2.56') * P * g / (4 * pi * lim_gp)), "d_OC_x2.56_m": sqrt(mpf('2.56') * P * g / (4 * pi * lim_oc)), "lambda/2pi_m": c0 / (mpf(f_) * 10 ** 6) / (2 * pi)}, "W/m2, V/m, m", RT, "S = F P G/(4 pi R^2); limits 47 CFR 1.1310 Table 1")
for f_ in ('1.85', '3.6', '5.36', '7.1', '10.12', '14.2', '18.1', '21.2', '24.9', '28.5', '50.1', '145', '435', '1296'):
    f = mpf(f_)
    r = {}
    r["FCC_GP_S_W/m2"] = (1000 if f <= mpf('1.34') else 1800 / f ** 2 if f <= 30 else 2 if f <= 300 else f / 150 if f <= 1500 else 10)
    r["FCC_OC_S_W/m2"] = (1000 if f <= 3 else 9000 / f ** 2 if f <= 30 else 10 if f <= 300 else f / 30 if f <= 1500 else 50)
    r["FCC_GP_E_V/m"] = (614 if f <= mpf('1.34') else 824 / f if f <= 30 else mpf('27.5') if f <= 300 else None)
    r["FCC_OC_E_V/m"] = (614 if f <= 3 else 1842 / f if f <= 30 else mpf('61.4') if f <= 300 else None)
    r["ICNIRP2020_GP_WB_E_V/m"] = (300 / f ** mpf('0.7') if f <= 30 else mpf('27.7') if f <= 400 else mpf('1.375') * sqrt(f) if f <= 2000 else None)
    r["ICNIRP2020_GP_WB_H_A/m"] = (mpf('2.2') / f if f <= 30 else mpf('0.073') if f <= 400 else mpf('0.0037') * sqrt(f) if f <= 2000 else None)
    r["ICNIRP2020_OC_WB_E_V/m"] = (660 / f ** mpf('0.7') if f <= 30 else mpf(61) if f <= 400 else 3 * sqrt(f) if f <= 2000 else None)
    r["ICNIRP2020_OC_WB_H_A/m"] = (mpf('4.9') / f if f <= 30 else mpf('0.16') if f <= 400 else mpf('0.008') * sqrt(f) if f <= 2000 else None)
    r["ICNIRP2020_GP_local_E_V/m"] = (671 / f ** mpf('0.7') if f <= 30 else mpf(62) if f <= 400 else mpf('4.72') * f ** mpf('0.43') if f <= 2000 else None)
    r["ICNIRP2020_OC_local_E_V/m"] = (1504 / f ** mpf('0.7') if f <= 30 else mpf(139) if f <= 400 else mpf('10.58') * f ** mpf('0.43') if f <= 2000 else None)
    add(f"exposure.limits.{f_}MHz", "limits evaluated at an amateur frequency", {"f_MHz": f}, r, "W/m2, V/m, A/m", "1e-6", "47 CFR 1.1310 Table 1; ICNIRP 2020 Tables 5 and 6 (whole-body values from memory, see exposure.json)")
add("exposure.duty", "time-averaged power, 500 W PEP, 40 % duty, 45 s in 360 s", {"P": 500, "duty": mpf('0.4'), "on": mpf('0.125')}, mpf(25), "W", "exact", "worked example in OET 65 Supplement B")

# --------------------------------------------------------------------------
# 10. breakdown
for alt in (0, 500, 1000, 1500, 2000, 3000, 4000, 5000):
    h = mpf(alt)
    pr = mpf('101325') * (1 - mpf('2.25577e-5') * h) ** mpf('5.25588'); T = mpf('288.15') - mpf('0.0065') * h
    add(f"air.density.{alt}m", "relative air density of the standard atmosphere", {"altitude_m": alt}, {"p_Pa": pr, "p_rel": pr / 101325, "T_K": T, "density_rel_to_sea_level": (pr / 101325) * mpf('288.15') / T, "delta_Peek_25C_ref": (pr / 101325) * mpf('298.15') / T}, "Pa, K, 1", "1e-6", "ISO 2533 troposphere")
for pd in ('0.2', '0.5', '0.567', '1', '5', '10', '76', '760'):
    p = mpf(pd); A, B, gam = mpf(15), mpf(365), mpf('0.01')
    den = ln(A * p) - ln(ln(1 + 1 / gam))
    add(f"air.paschen.{pd}", "Paschen curve of air with A = 15, B = 365, gamma = 0.01", {"pd_Torr_cm": p}, B * p / den if den > 0 else "no breakdown in this model", "V (peak)", "1e-9 for the formula, 10 % and worse against air", "V = B pd/[ln(A pd) - ln ln(1+1/gamma)]")
for r in ('0.05', '0.1', '0.2', '0.5', '1.0'):
    rc = mpf(r)
    add(f"air.peek.{r}cm", "corona onset field at the surface of a smooth wire, sea level 25 C", {"radius_cm": rc}, {"parallel_wires_kV/cm_peak": 30 * (1 + mpf('0.301') / sqrt(rc)), "coaxial_kV/cm_peak": 31 * (1 + mpf('0.308') / sqrt(rc))}, "kV/cm", "formula; 10 % in practice", "Peek: 30 d(1+0.301/sqrt(d r)), coaxial 31 d(1+0.308/sqrt(d r))")

json.dump(REC, sys.stdout, indent=1, ensure_ascii=False)
