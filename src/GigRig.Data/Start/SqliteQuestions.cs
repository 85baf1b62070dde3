using Microsoft.Data.Sqlite;

namespace GigRig.Data.Start;

/// <summary>Short questions to a plain connection.</summary>
internal static class SqliteQuestions
{
    extension(SqliteConnection connection)
    {
        /// <summary>The first value of the answer as text; null for no answer.</summary>
        public string? Ask(string sql) => connection.AskAll(sql).FirstOrDefault();

        public List<string> AskAll(string sql)
        {
            using var command = connection.CreateCommand();
            command.CommandText = sql;
            using var reader = command.ExecuteReader();
            List<string> answers = [];
            while (reader.Read())
                answers.Add(reader.GetString(0));
            return answers;
        }
    }
}
