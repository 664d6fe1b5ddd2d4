namespace HortiCalc.Beds;

/// <summary>Plane geometry of outlines with straight sides, corner by corner.</summary>
internal static class PolygonKernels
{
    // Points closer than this share of the outline's extent are taken as one: it lies well above the noise of turning
    // and shifting a plan, and well below a hair's breadth on any bed.
    private const double RelativeTouch = 1e-9;

    /// <summary>The shoelace formula; positive where the corners run anticlockwise.</summary>
    /// <remarks>Measured from the first corner, so that a plan far from its origin keeps its digits.</remarks>
    public static double SignedSquareMetres(ReadOnlySpan<double> xMetres, ReadOnlySpan<double> yMetres)
    {
        double twice = 0;
        for (int i = 1; i + 1 < xMetres.Length; i++)
        {
            twice += (xMetres[i] - xMetres[0]) * (yMetres[i + 1] - yMetres[0])
                - (xMetres[i + 1] - xMetres[0]) * (yMetres[i] - yMetres[0]);
        }

        return twice / 2;
    }

    public static double PerimeterMetres(ReadOnlySpan<double> xMetres, ReadOnlySpan<double> yMetres)
    {
        double sum = 0;
        for (int i = 0; i < xMetres.Length; i++)
        {
            int next = (i + 1) % xMetres.Length;
            sum += double.Hypot(xMetres[next] - xMetres[i], yMetres[next] - yMetres[i]);
        }

        return sum;
    }

    /// <summary>The first two corners that are one point, if any.</summary>
    public static (int First, int Second)? FirstCoincidence(ReadOnlySpan<double> xMetres, ReadOnlySpan<double> yMetres)
    {
        double touchMetres = TouchMetres(xMetres, yMetres);
        for (int i = 0; i < xMetres.Length; i++)
        {
            for (int j = i + 1; j < xMetres.Length; j++)
            {
                if (double.Hypot(xMetres[j] - xMetres[i], yMetres[j] - yMetres[i]) <= touchMetres)
                    return (i, j);
            }
        }

        return null;
    }

    /// <summary>The first two sides that cross or touch elsewhere than at the corner they share, if any; by their first
    /// corners.</summary>
    public static (int First, int Second)? FirstContact(ReadOnlySpan<double> xMetres, ReadOnlySpan<double> yMetres)
    {
        double touchMetres = TouchMetres(xMetres, yMetres);
        int count = xMetres.Length;
        for (int i = 0; i < count; i++)
        {
            for (int j = i + 1; j < count; j++)
            {
                int iEnd = (i + 1) % count;
                int jEnd = (j + 1) % count;
                bool contact = (j == iEnd, i == jEnd) switch
                {
                    (true, false) => FoldsBack(xMetres, yMetres, i, iEnd, jEnd, touchMetres),
                    (false, true) => FoldsBack(xMetres, yMetres, j, i, iEnd, touchMetres),
                    _ => Meet(xMetres, yMetres, i, iEnd, j, jEnd, touchMetres),
                };
                if (contact)
                    return (i, j);
            }
        }

        return null;
    }

    /// <summary>How the outline grows outward: each corner adds the tangent of half its turn, or half its turn where it is round.
    /// An inward corner takes its tangent away again in both.</summary>
    public static BedOutline Outline(ReadOnlySpan<double> xMetres, ReadOnlySpan<double> yMetres)
    {
        double side = Math.Sign(SignedSquareMetres(xMetres, yMetres));
        double sharp = 0;
        double round = 0;
        for (int i = 0; i < xMetres.Length; i++)
        {
            double turn = side * TurnRadians(xMetres, yMetres, i);
            sharp += Math.Tan(turn / 2);
            round += turn > 0 ? turn / 2 : Math.Tan(turn / 2);
        }

        return new BedOutline(PerimeterMetres(xMetres, yMetres), sharp, round);
    }

    /// <summary>Whether the outline moved outward by a width, with sharp corners, meets itself or loses a side.</summary>
    public static bool BorderMeetsItself(ReadOnlySpan<double> xMetres, ReadOnlySpan<double> yMetres, double widthMetres)
    {
        int count = xMetres.Length;
        double side = Math.Sign(SignedSquareMetres(xMetres, yMetres));
        double[] outerX = new double[count];
        double[] outerY = new double[count];
        for (int i = 0; i < count; i++)
        {
            int before = (i + count - 1) % count;
            double lengthMetres = double.Hypot(xMetres[i] - xMetres[before], yMetres[i] - yMetres[before]);
            double alongX = (xMetres[i] - xMetres[before]) / lengthMetres;
            double alongY = (yMetres[i] - yMetres[before]) / lengthMetres;
            double past = widthMetres * Math.Tan(side * TurnRadians(xMetres, yMetres, i) / 2);
            outerX[i] = xMetres[i] + side * alongY * widthMetres + alongX * past;
            outerY[i] = yMetres[i] - side * alongX * widthMetres + alongY * past;
        }

        for (int i = 0; i < count; i++)
        {
            int next = (i + 1) % count;
            double kept = (outerX[next] - outerX[i]) * (xMetres[next] - xMetres[i]) + (outerY[next] - outerY[i]) * (yMetres[next] - yMetres[i]);
            if (kept <= 0)
                return true;
        }

        return FirstContact(outerX, outerY) is not null;
    }

    /// <summary>By how much the way turns at a corner, from -π to π; positive to the left.</summary>
    private static double TurnRadians(ReadOnlySpan<double> x, ReadOnlySpan<double> y, int corner)
    {
        int before = (corner + x.Length - 1) % x.Length;
        int after = (corner + 1) % x.Length;
        double inX = x[corner] - x[before];
        double inY = y[corner] - y[before];
        double outX = x[after] - x[corner];
        double outY = y[after] - y[corner];
        return Math.Atan2(inX * outY - inY * outX, inX * outX + inY * outY);
    }

    private static double TouchMetres(ReadOnlySpan<double> xMetres, ReadOnlySpan<double> yMetres)
    {
        double lowX = xMetres[0], highX = xMetres[0], lowY = yMetres[0], highY = yMetres[0];
        for (int i = 1; i < xMetres.Length; i++)
        {
            lowX = Math.Min(lowX, xMetres[i]);
            highX = Math.Max(highX, xMetres[i]);
            lowY = Math.Min(lowY, yMetres[i]);
            highY = Math.Max(highY, yMetres[i]);
        }

        return RelativeTouch * Math.Max(highX - lowX, highY - lowY);
    }

    /// <summary>Whether two sides that share a corner lie on one another.</summary>
    private static bool FoldsBack(ReadOnlySpan<double> x, ReadOnlySpan<double> y, int start, int shared, int end, double touchMetres) =>
        PointToSideMetres(x, y, start, shared, end) <= touchMetres || PointToSideMetres(x, y, end, start, shared) <= touchMetres;

    private static bool Meet(ReadOnlySpan<double> x, ReadOnlySpan<double> y, int a, int b, int c, int d, double touchMetres)
    {
        bool cross = Turn(x, y, a, b, c) * Turn(x, y, a, b, d) < 0 && Turn(x, y, c, d, a) * Turn(x, y, c, d, b) < 0;
        return cross
            || PointToSideMetres(x, y, a, c, d) <= touchMetres
            || PointToSideMetres(x, y, b, c, d) <= touchMetres
            || PointToSideMetres(x, y, c, a, b) <= touchMetres
            || PointToSideMetres(x, y, d, a, b) <= touchMetres;
    }

    /// <summary>Positive where the way from a over b to c turns left, negative where it turns right.</summary>
    private static int Turn(ReadOnlySpan<double> x, ReadOnlySpan<double> y, int a, int b, int c) =>
        Math.Sign((x[b] - x[a]) * (y[c] - y[a]) - (y[b] - y[a]) * (x[c] - x[a]));

    private static double PointToSideMetres(ReadOnlySpan<double> x, ReadOnlySpan<double> y, int point, int start, int end)
    {
        double alongX = x[end] - x[start];
        double alongY = y[end] - y[start];
        double share = ((x[point] - x[start]) * alongX + (y[point] - y[start]) * alongY) / (alongX * alongX + alongY * alongY);
        share = Math.Clamp(share, 0, 1);
        return double.Hypot(x[point] - x[start] - share * alongX, y[point] - y[start] - share * alongY);
    }
}
