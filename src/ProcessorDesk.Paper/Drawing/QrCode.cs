using QRCoder;

namespace ProcessorDesk.Paper.Drawing;

/// <summary>A QR symbol as boxes (ISO/IEC 18004), level Q so that a wet or frosty label still reads.</summary>
internal static class QrCode
{
    /// <summary>Modules from edge to edge with the quiet zone of four on each side, for a ticket code: version 1.</summary>
    public const int ModulesOfTicketCode = 21 + 8;

    /// <summary>Draws the symbol, quiet zone included, so that it fills the square.</summary>
    public static void Draw(Canvas canvas, string payload, double x, double y, double side)
    {
        var (modules, runs) = Symbol(payload);
        var module = side / modules;
        canvas.Fill(runs.Select(run => new Box(x + run.Column * module, y + run.Row * module, run.Length * module, module)));
    }

    /// <summary>The symbol's modules from edge to edge, quiet zone included, and its dark runs.</summary>
    public static (int Side, IReadOnlyList<(int Row, int Column, int Length)> Runs) Symbol(string payload)
    {
        using var data = QRCodeGenerator.GenerateQrCode(payload, QRCodeGenerator.ECCLevel.Q);
        return (data.ModuleMatrix.Count, [.. Runs(data.ModuleMatrix)]);
    }

    private static IEnumerable<(int Row, int Column, int Length)> Runs(List<System.Collections.BitArray> matrix)
    {
        for (var row = 0; row < matrix.Count; row++)
            for (var column = 0; column < matrix.Count; column++)
            {
                var start = column;
                while (column < matrix.Count && matrix[row][column])
                    column++;
                if (column > start)
                    yield return (row, start, column - start);
            }
    }
}
