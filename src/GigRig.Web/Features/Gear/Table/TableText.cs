using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;

namespace GigRig.Web.Features.Gear.Table;

/// <summary>A table as it was given: rows of cells, all text and nothing but text.</summary>
/// <param name="Delimiter">What was found to stand between cells.</param>
/// <param name="Rows">Empty rows left out, each with the number of its line in the text; short rows are filled up with empty cells.</param>
public sealed record TableText(string Delimiter, IReadOnlyList<TableRow> Rows)
{
    public const int MostRows = 2000;
    public const int MostColumns = 40;
    public const int LongestCell = 4000;

    // A quotation mark inside a cell that does not begin with one is an inch mark.
    private static readonly CsvConfiguration Manners = new(CultureInfo.InvariantCulture)
    {
        DetectDelimiter = true,
        DetectDelimiterValues = ["\t", ";", ",", "|"],
        BadDataFound = null,
        TrimOptions = TrimOptions.Trim,
        MaxFieldSize = LongestCell * 4,
    };

    public int Columns => Rows.Count == 0 ? 0 : Rows[0].Cells.Length;

    /// <summary>Reads a table by RFC 4180, with whichever delimiter cuts its lines most evenly.</summary>
    /// <param name="fault">Why it could not be read; empty where it could.</param>
    public static TableText? Read(string text, out string fault)
    {
        var rows = new List<TableRow>();
        using var parser = new CsvParser(new StringReader(text), Manners);
        try
        {
            while (parser.Read())
            {
                var cells = parser.Record!.Select(cell => cell.Trim()).ToArray();
                if (cells.All(cell => cell.Length == 0))
                    continue;
                var line = parser.RawRow - parser.RawRecord.TrimEnd('\r', '\n').Count(c => c == '\n');
                if ((fault = FaultOf(cells, line, rows.Count)).Length > 0)
                    return null;
                rows.Add(new(line, cells));
            }
        }
        catch (CsvHelperException)
        {
            fault = $"Line {parser.RawRow} can't be cut into cells: perhaps a quotation mark is opened and not closed. Save the table as CSV anew, or paste it from the spreadsheet.";
            return null;
        }

        fault = rows.Count == 0 ? "There is nothing in it. Give at least one line, such as: Meadow;compact;overdrive;9" : "";
        var columns = rows.Select(row => row.Cells.Length).DefaultIfEmpty().Max();
        return rows.Count == 0 ? null : new(parser.Delimiter, [.. rows.Select(row => row.FilledTo(columns))]);
    }

    private static string FaultOf(string[] cells, int line, int rows) =>
        rows >= MostRows ? $"It has more than {MostRows} rows. Give it in parts of at most {MostRows}."
        : cells.Length > MostColumns ? $"Line {line} has {cells.Length} columns; give at most {MostColumns}."
        : cells.FirstOrDefault(cell => cell.Length > LongestCell) is { } tooLong ? $"Line {line} has a cell of {tooLong.Length} characters, \"{tooLong[..20]}…\"; give at most {LongestCell}."
        : "";
}

/// <summary>One row of a table.</summary>
/// <param name="Line">1 for the first line of the text.</param>
public sealed record TableRow(int Line, string[] Cells)
{
    public TableRow FilledTo(int columns) => Cells.Length >= columns ? this : this with { Cells = [.. Cells, .. Enumerable.Repeat("", columns - Cells.Length)] };
}
